package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import lungfish.drawing.SceneParts.GangPart;

/** Paints gang valves and strings of tees: a small bar, and the feeder that leads to it. */
final class GangPainter {
    private GangPainter() {}

    static void paint(RoomScene scene, Ink ink) {
        scene.gangs().forEach(gang -> paint(gang, ink));
    }

    private static void paint(GangPart gang, Ink ink) {
        double x = ink.view().xPx(gang.xM());
        double y = ink.view().yPx(gang.yM());
        gang.tapM()
                .ifPresent(tap -> ink.line(
                        ink.view().xPx(tap[0]),
                        ink.view().yPx(tap[1]),
                        x,
                        y,
                        ink.palette().air(),
                        1.2));
        Rectangle2D bar = barPx(gang, ink);
        ink.fill(bar, ink.palette().sheet());
        ink.draw(bar, ink.palette().air(), 1.2);
    }

    static Rectangle2D barPx(GangPart gang, Ink ink) {
        double x = ink.view().xPx(gang.xM());
        double y = ink.view().yPx(gang.yM());
        return new Rectangle2D.Double(x - ink.mark(6), y - ink.mark(2), ink.mark(12), ink.mark(4));
    }
}
