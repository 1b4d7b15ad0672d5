package lungfish.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.function.Consumer;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.drawing.SceneParts.TankPart;

/** Paints a rack from above: its outline, and in strips of shelves its tanks. */
final class RackTopPainter {
    private static final double RACK_PX = 1.4;
    private static final double CORNER_PX = 4;
    private static final double GLASS_CORNER_PX = 2;
    private static final double UNDER_EDGE = 0.1; // of a corner's size

    private RackTopPainter() {}

    static void paint(RackPart rack, Optional<OxygenLaid> breathing, Ink ink) {
        Rectangle2D box = ink.view().px(rack.outlineM());
        if (!ink.isSeen(Marks.outset(box, ink.px(2)))) {
            return;
        }
        RoundRectangle2D outline = rounded(box, 0, CORNER_PX, ink);
        ink.fill(
                Marks.outset(box, -UNDER_EDGE * ink.px(CORNER_PX)),
                ink.palette().sheet());
        tanks(rack, breathing, ink);
        if (rack.rack().isPlanned()) {
            ink.draw(outline, ink.palette().planned(), ink.dashed(RACK_PX, 4));
        } else {
            ink.draw(outline, ink.palette().softInk(), RACK_PX);
        }
    }

    /** Edges all at once: a hall has hundreds, and a shape has its price however small it is. */
    private static void tanks(RackPart rack, Optional<OxygenLaid> breathing, Ink ink) {
        Path2D glass = new Path2D.Double();
        rack.tanks().forEach(tank -> glass.append(glass(tank, ink), false));
        if (rack.rack().isPlanned()) {
            ink.draw(glass, ink.palette().planned(), ink.dashed(0.9, 3));
        } else {
            Consumer<TankPart> water = breathing
                    .map(laid -> new OxygenPainter(laid, ink))
                    .<Consumer<TankPart>>map(painter -> tank -> painter.strip(tank.tank(), waterPx(tank, ink)))
                    .orElse(tank -> ink.fillWater(waterPx(tank, ink)));
            rack.tanks().forEach(water);
            ink.draw(glass, ink.palette().waterEdge(), 0.9);
        }
    }

    /** A plain box, which is painted many times faster than one with round corners; the edge hides its own. */
    private static Rectangle2D waterPx(TankPart tank, Ink ink) {
        return Marks.outset(glassPx(tank, ink), -UNDER_EDGE * ink.px(GLASS_CORNER_PX));
    }

    static Rectangle2D glassPx(TankPart tank, Ink ink) {
        return glass(tank, ink).getBounds2D();
    }

    private static RoundRectangle2D glass(TankPart tank, Ink ink) {
        Rectangle2D box = ink.view().px(tank.boxM());
        double inset = Math.min(ink.px(2), 0.1 * Math.min(box.getWidth(), box.getHeight()));
        return rounded(box, inset, GLASS_CORNER_PX, ink);
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
