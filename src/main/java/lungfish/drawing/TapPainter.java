package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import lungfish.drawing.SceneParts.TapPart;

/** Paints the taps as teeth of a comb: each as long as the spare pressure there. */
final class TapPainter {
    private static final double LONGEST_PX = 14;
    private static final double SHORTEST_PX = 2.5;
    private static final double ASIDE_PX = 6;

    private TapPainter() {}

    static void paint(RoomScene scene, Ink ink) {
        double most = scene.taps().stream()
                .flatMapToDouble(tap -> tap.sparePa().stream())
                .max()
                .orElse(0);
        scene.taps().stream().filter(tap -> !tap.index()).forEach(tap -> tooth(tap, most, scene, ink));
        scene.taps().stream().filter(TapPart::index).forEach(tap -> tooth(tap, most, scene, ink));
    }

    private static void tooth(TapPart tap, double mostPa, RoomScene scene, Ink ink) {
        double wall = ink.mark(PipePainter.BORE_PX / 2 + 1);
        double x = ink.view().xPx(tap.xM()) + wall * tap.towardsX();
        double y = ink.view().yPx(tap.yM()) + wall * tap.towardsY();
        double spare = tap.sparePa().orElse(0);
        if (spare < 0) {
            StateMark.paint(
                    OutletState.STARVED, x + wall * tap.towardsX(), y + wall * tap.towardsY(), ink.mark(2.6), ink);
            return;
        }
        double share = mostPa > 0 ? spare / mostPa : 0;
        double length = ink.mark(SHORTEST_PX + share * (LONGEST_PX - SHORTEST_PX));
        Line2D line = new Line2D.Double(x, y, x + length * tap.towardsX(), y + length * tap.towardsY());
        Color colour = tap.index() ? ink.palette().accent() : ink.palette().air();
        double width = ink.mark(tap.index() ? 2.4 : 1.6);
        ink.draw(
                besideMarks(line, tap, scene, ink),
                colour,
                new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    }

    /** A tooth that would run through an outlet's mark stands a mark's width beside it, along the pipe. */
    private static Line2D besideMarks(Line2D line, TapPart tap, RoomScene scene, Ink ink) {
        boolean isFree = scene.outlets().stream()
                .noneMatch(outlet ->
                        line.ptSegDist(ink.view().xPx(outlet.xM()), ink.view().yPx(outlet.yM()))
                                < OutletPainter.radiusPx(outlet, ink));
        if (isFree) {
            return line;
        }
        double by = ink.mark(ASIDE_PX);
        double dx = -by * Math.abs(tap.towardsY());
        double dy = -by * Math.abs(tap.towardsX());
        return new Line2D.Double(line.getX1() + dx, line.getY1() + dy, line.getX2() + dx, line.getY2() + dy);
    }
}
