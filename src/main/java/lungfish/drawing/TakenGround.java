package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.room.Point;
import lungfish.room.Run;

/** What labels should not cover: racks, pipes, teeth, machines, walls, rulers, each by how much it matters. */
final class TakenGround {
    /** No name goes over a figure. */
    private static final double FIGURE = 30;

    private final RoomScene scene;
    private final Ink ink;
    private final Rectangle2D frame;
    private final LabelSpots spots;

    private TakenGround(RoomScene scene, Rectangle2D frame, Ink ink) {
        this.scene = scene;
        this.ink = ink;
        this.frame = frame;
        this.spots = new LabelSpots(frame);
    }

    /**
     * Places for labels on this scene, all inside a frame.
     *
     * @param taken boxes of words that are placed already
     */
    static LabelSpots of(RoomScene scene, Rectangle2D frame, List<Rectangle2D> taken, Ink ink) {
        TakenGround ground = new TakenGround(scene, frame, ink);
        ground.takeWhatIsDrawn();
        taken.forEach(box -> ground.spots.take(box, FIGURE));
        return ground.spots;
    }

    private void takeWhatIsDrawn() {
        takeRulers();
        scene.racks().forEach(rack -> spots.take(ink.view().px(rack.outlineM()), 3));
        scene.room().runs().forEach(this::take);
        scene.taps()
                .forEach(tap -> spots.take(
                        Boxes.around(
                                ink.view().xPx(tap.xM()) + ink.mark(10) * tap.towardsX(),
                                ink.view().yPx(tap.yM()) + ink.mark(10) * tap.towardsY(),
                                ink.mark(8)),
                        0.6));
        scene.outlets().stream().filter(outlet -> !outlet.index()).forEach(this::take);
        scene.blowers().forEach(blower -> spots.take(BlowerPainter.boxPx(blower, ink), 3));
        scene.gangs()
                .forEach(gang -> spots.take(
                        Boxes.around(ink.view().xPx(gang.xM()), ink.view().yPx(gang.yM()), ink.px(6)), 1));
        scene.room()
                .shell()
                .walls()
                .forEach(wall -> spots.take(
                        Boxes.between(
                                ink.view().px(wall.fromXM(), wall.fromYM()).getX(),
                                ink.view().px(wall.fromXM(), wall.fromYM()).getY(),
                                ink.view().px(wall.toXM(), wall.toYM()).getX(),
                                ink.view().px(wall.toXM(), wall.toYM()).getY(),
                                ink.px(2)),
                        15));
        scene.fittings()
                .forEach(fitting -> spots.take(
                        Boxes.around(ink.view().xPx(fitting.xM()), ink.view().yPx(fitting.yM()), ink.mark(8)), 1));
        takeOuterWalls();
        scene.room()
                .listener()
                .ifPresent(ear -> spots.take(
                        Boxes.around(
                                ink.view().xPx(ear.place().xM()),
                                ink.view().yPx(ear.place().yM()),
                                ink.px(13)),
                        3));
    }

    /** Names cover a rack anyway; it is leaders that should go between the marks. */
    private void take(OutletPart outlet) {
        double radius = OutletPainter.radiusPx(outlet, ink) + ink.px(1);
        spots.take(Boxes.around(ink.view().xPx(outlet.xM()), ink.view().yPx(outlet.yM()), radius), 5);
    }

    private void takeRulers() {
        RulerPainter.figuresPx(scene, frame, ink).forEach(figure -> spots.take(figure, 12));
        Rectangle2D room = ink.view().px(scene.boundsM());
        double band = ink.px(RulerPainter.BAND_PX);
        double gap = ink.px(RulerPainter.GAP_PX);
        spots.take(new Rectangle2D.Double(room.getX(), room.getY() - band, room.getWidth(), band - gap / 2), 0.3);
        spots.take(new Rectangle2D.Double(room.getX() - band, room.getY(), band - gap / 2, room.getHeight()), 8);
    }

    private void takeOuterWalls() {
        Rectangle2D room = ink.view()
                .px(new Rectangle2D.Double(
                        0,
                        0,
                        scene.room().shell().lengthM(),
                        scene.room().shell().widthM()));
        double x = room.getX();
        double y = room.getY();
        spots.take(Boxes.between(x, y, room.getMaxX(), y, ink.px(3)), 30);
        spots.take(Boxes.between(x, room.getMaxY(), room.getMaxX(), room.getMaxY(), ink.px(3)), 30);
        spots.take(Boxes.between(x, y, x, room.getMaxY(), ink.px(3)), 30);
        spots.take(Boxes.between(room.getMaxX(), y, room.getMaxX(), room.getMaxY(), ink.px(3)), 30);
    }

    private void take(Run run) {
        List<Point> corners = run.corners();
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            spots.take(
                    Boxes.between(
                            ink.view().xPx(from.xM()),
                            ink.view().yPx(from.yM()),
                            ink.view().xPx(to.xM()),
                            ink.view().yPx(to.yM()),
                            ink.mark(6)),
                    3);
        }
    }
}
