package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.room.Run;

/** Paints what is marked on a room over all else, so that the room itself need not be painted again for it. */
final class RoomMarks {
    private static final double BESIDE_PIPE_PX = 10; // the marks of a pipe stand so far apart

    private final Marked marked;
    private final Ink ink;

    private RoomMarks(Marked marked, Ink ink) {
        this.marked = marked;
        this.ink = ink;
    }

    static void paint(RoomScene scene, Marked marked, Ink ink) {
        if (marked.isNothing()) {
            return;
        }
        RoomMarks marks = new RoomMarks(marked, ink);
        scene.room().runs().forEach(marks::run);
        scene.racks().forEach(marks::rack);
        scene.gangs().forEach(gang -> Marks.around(gang.part(), GangPainter.barPx(gang, ink), marked, ink));
        scene.outlets().forEach(marks::outlet);
        scene.blowers().forEach(blower -> Marks.around(blower.part(), BlowerPainter.boxPx(blower, ink), marked, ink));
    }

    private void run(Run run) {
        boolean isChosen = marked.isChosen(run.id().part());
        if (isChosen || marked.isHovered(run.id().part())) {
            double wide = ink.mark(PipePainter.BORE_PX + BESIDE_PIPE_PX);
            Shape beside = new BasicStroke((float) wide, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_ROUND)
                    .createStrokedShape(PipePainter.path(run, ink.view()));
            ink.draw(new Area(beside), ink.palette().ink(), isChosen ? 1.6 : 1);
        }
    }

    private void rack(RackPart rack) {
        Marks.around(rack.rack().id().part(), ink.view().px(rack.outlineM()), marked, ink);
        rack.tanks().forEach(tank -> Marks.around(tank.part(), RackTopPainter.glassPx(tank, ink), marked, ink));
    }

    private void outlet(OutletPart outlet) {
        double x = ink.view().xPx(outlet.xM());
        double y = ink.view().yPx(outlet.yM());
        Shape around = StateMark.circle(x, y, OutletPainter.radiusPx(outlet, ink) * 2.2 + ink.px(2));
        if (marked.isChosen(outlet.part())) {
            ink.draw(around, ink.palette().ink(), 2);
        } else if (marked.isHovered(outlet.part())) {
            ink.draw(around, ink.palette().softInk(), 1);
        }
    }
}
