package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import lungfish.drawing.SceneParts.TapPart;

/** Paints the taps as teeth of a comb: each as long as the spare pressure there. */
final class TapPainter {
    private static final double LONGEST_PX = 15;
    private static final double SHORTEST_PX = 2.5;

    private TapPainter() {}

    static void paint(RoomScene scene, Ink ink) {
        double most = scene.taps().stream()
                .flatMapToDouble(tap -> tap.sparePa().stream())
                .max()
                .orElse(0);
        scene.taps().stream().filter(tap -> !tap.index()).forEach(tap -> tooth(tap, most, ink));
        scene.taps().stream().filter(TapPart::index).forEach(tap -> tooth(tap, most, ink));
    }

    private static void tooth(TapPart tap, double mostPa, Ink ink) {
        double wall = ink.px(PipePainter.BORE_PX / 2 + 1);
        double x = ink.view().xPx(tap.xM()) + wall * tap.towardsX();
        double y = ink.view().yPx(tap.yM()) + wall * tap.towardsY();
        double spare = tap.sparePa().orElse(0);
        if (spare < 0) {
            StateMark.paint(
                    OutletState.STARVED, x + wall * tap.towardsX(), y + wall * tap.towardsY(), ink.px(2.6), ink);
            return;
        }
        double share = mostPa > 0 ? spare / mostPa : 0;
        double length = ink.px(SHORTEST_PX + share * (LONGEST_PX - SHORTEST_PX));
        Color colour = tap.index() ? ink.palette().accent() : ink.palette().air();
        Line2D line = new Line2D.Double(x, y, x + length * tap.towardsX(), y + length * tap.towardsY());
        double width = tap.index() ? 2.4 : 1.8;
        ink.draw(line, colour, new BasicStroke((float) ink.px(width), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    }
}
