package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** The front of a rack for paper: heights of its shelves, its width, how wide each tank is. */
final class PaperRack {
    private static final double SIDES_PX = 74;
    private static final double ABOVE_PX = 8;
    private static final double BELOW_PX = 44;

    private final RackScene scene;
    private final Look look;

    PaperRack(RackScene scene, Look look) {
        this.scene = scene;
        this.look = look;
    }

    FigurePainter.Fitted fitted(double mostWidthPt, double mostHeightPt) {
        Rectangle2D bounds = scene.boundsM();
        PaperScale scale = PaperScale.of(
                look.quantities().units(),
                bounds.getWidth(),
                bounds.getHeight(),
                mostWidthPt - 2 * look.px(SIDES_PX),
                mostHeightPt - look.px(ABOVE_PX + BELOW_PX));
        return new FigurePainter.Fitted(
                Math.min(mostWidthPt, bounds.getWidth() * scale.ptPerM() + 2 * look.px(SIDES_PX)),
                bounds.getHeight() * scale.ptPerM() + look.px(ABOVE_PX + BELOW_PX),
                Optional.of(scale.words()),
                (area, g) -> paint(area, scale, g));
    }

    private void paint(Rectangle2D area, PaperScale scale, Graphics2D g) {
        Viewport view =
                new Viewport(scale.ptPerM(), area.getX() + look.px(SIDES_PX), area.getMaxY() - look.px(BELOW_PX));
        HeightsPainter.paint(scene, view, look, g);
        RackPainter.paint(scene, view, Marked.NOTHING, look, g);
        Ink ink = new Ink(look, view, g);
        scene.rack().shelves().forEach(shelf -> shelf.tanks().forEach(tank -> size(shelf, tank, ink)));
        width(ink);
    }

    /** Over the tank, left of its first airline. */
    private void size(Shelf shelf, Tank tank, Ink ink) {
        Rectangle2D glass = ink.view().px(RackScene.glassM(shelf, tank));
        Font font = ink.type().drawing();
        double roomPx = glass.getWidth() / (tank.outlets().size() + 1.0) - ink.px(6);
        String text = show(tank.outside().lengthM());
        if (ink.width(text, font) <= roomPx) {
            ink.text(
                    text,
                    glass.getX() + ink.px(2),
                    glass.getY() - ink.px(3),
                    font,
                    ink.palette().ink());
        }
    }

    /** Below the floor: how wide the rack is, and how deep. */
    private void width(Ink ink) {
        Rack rack = scene.rack();
        double left = ink.view().xPx(0);
        double right = ink.view().xPx(rack.widthM());
        double y = ink.view().yPx(0) + ink.px(28);
        ink.line(left, y, right, y, ink.palette().ink(), 0.6);
        DoubleStream.of(left, right)
                .forEach(x -> ink.line(
                        x, y - ink.px(5), x, y + ink.px(5), ink.palette().ink(), 0.6));
        String says = show(rack.widthM()) + " wide, " + show(rack.depthM()) + " deep";
        Font font = ink.type().drawing();
        double wide = ink.width(says, font) + ink.px(8);
        double middle = (left + right) / 2;
        ink.fill(
                new Rectangle2D.Double(middle - wide / 2, y - ink.px(8), wide, ink.px(16)),
                ink.palette().sheet());
        ink.textAround(says, middle, y + ink.px(4), font, ink.palette().ink());
    }

    private String show(double m) {
        return look.quantities().show(m, Dimension.DEPTH);
    }
}
