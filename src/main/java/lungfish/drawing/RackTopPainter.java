package lungfish.drawing;

import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.drawing.SceneParts.TankPart;

/** Paints a rack from above: its outline, and in strips of shelves its tanks. */
final class RackTopPainter {
    private static final double RACK_PX = 1.4;
    private static final double CORNER_PX = 4;

    private RackTopPainter() {}

    static void paint(RackPart rack, Marked marked, Ink ink) {
        RoundRectangle2D outline = rounded(ink.view().px(rack.outlineM()), 0, CORNER_PX, ink);
        ink.fill(outline, ink.palette().sheet());
        rack.tanks().forEach(tank -> tank(tank, marked, ink));
        if (rack.rack().isPlanned()) {
            ink.draw(outline, ink.palette().planned(), ink.dashed(RACK_PX, 4));
        } else {
            ink.draw(outline, ink.palette().softInk(), RACK_PX);
        }
        Marks.around(rack.rack().id().part(), ink.view().px(rack.outlineM()), marked, ink);
    }

    private static void tank(TankPart tank, Marked marked, Ink ink) {
        Rectangle2D box = ink.view().px(tank.boxM());
        double inset = Math.min(ink.px(2), 0.1 * Math.min(box.getWidth(), box.getHeight()));
        RoundRectangle2D glass = rounded(box, inset, 2, ink);
        if (tank.planned()) {
            Stroke dashes = ink.dashed(0.9, 3);
            ink.draw(glass, ink.palette().planned(), dashes);
        } else {
            ink.fillWater(glass);
            ink.draw(glass, ink.palette().waterEdge(), 0.9);
        }
        Marks.around(tank.part(), glass.getBounds2D(), marked, ink);
    }

    private static RoundRectangle2D rounded(Rectangle2D box, double inset, double cornerPx, Ink ink) {
        double corner = ink.px(cornerPx);
        return new RoundRectangle2D.Double(
                box.getX() + inset,
                box.getY() + inset,
                Math.max(0.5, box.getWidth() - 2 * inset),
                Math.max(0.5, box.getHeight() - 2 * inset),
                corner,
                corner);
    }
}
