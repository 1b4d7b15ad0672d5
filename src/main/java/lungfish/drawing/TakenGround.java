package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import lungfish.room.Point;
import lungfish.room.Run;

/** What labels should not cover: racks, pipes, teeth, machines, walls, rulers, each by how much it matters. */
final class TakenGround {
    private final RoomScene scene;
    private final Ink ink;
    private final LabelSpots spots;

    private TakenGround(RoomScene scene, Ink ink) {
        this.scene = scene;
        this.ink = ink;
        this.spots = new LabelSpots(frame(ink));
    }

    /** Places for labels on this scene. */
    static LabelSpots of(RoomScene scene, Ink ink) {
        TakenGround ground = new TakenGround(scene, ink);
        ground.takeWhatIsDrawn();
        return ground.spots;
    }

    /** What is painted on, or all there is where nothing bounds it. */
    private static Rectangle2D frame(Ink ink) {
        Rectangle2D clip = ink.g().getClipBounds();
        return clip == null ? new Rectangle2D.Double(-1e6, -1e6, 2e6, 2e6) : clip;
    }

    private void takeWhatIsDrawn() {
        takeRulers();
        scene.racks().forEach(rack -> spots.take(ink.view().px(rack.outlineM()), 3));
        scene.room().runs().forEach(this::take);
        scene.taps()
                .forEach(tap -> spots.take(
                        around(
                                ink.view().xPx(tap.xM()) + ink.mark(10) * tap.towardsX(),
                                ink.view().yPx(tap.yM()) + ink.mark(10) * tap.towardsY(),
                                ink.mark(8)),
                        0.6));
        scene.blowers().forEach(blower -> spots.take(BlowerPainter.boxPx(blower, ink), 3));
        scene.gangs()
                .forEach(gang ->
                        spots.take(around(ink.view().xPx(gang.xM()), ink.view().yPx(gang.yM()), ink.px(6)), 1));
        scene.room()
                .shell()
                .walls()
                .forEach(wall -> spots.take(
                        between(
                                ink.view().px(wall.fromXM(), wall.fromYM()).getX(),
                                ink.view().px(wall.fromXM(), wall.fromYM()).getY(),
                                ink.view().px(wall.toXM(), wall.toYM()).getX(),
                                ink.view().px(wall.toXM(), wall.toYM()).getY(),
                                ink.px(2)),
                        2));
        takeOuterWalls();
        scene.room()
                .listener()
                .ifPresent(ear -> spots.take(
                        around(
                                ink.view().xPx(ear.place().xM()),
                                ink.view().yPx(ear.place().yM()),
                                ink.px(13)),
                        3));
    }

    private void takeRulers() {
        Rectangle2D room = ink.view().px(scene.boundsM());
        double band = ink.px(RulerPainter.BAND_PX);
        double gap = ink.px(RulerPainter.GAP_PX);
        spots.take(new Rectangle2D.Double(room.getX(), room.getY() - band, room.getWidth(), band - gap / 2), 8);
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
        spots.take(between(x, y, room.getMaxX(), y, ink.px(3)), 8);
        spots.take(between(x, room.getMaxY(), room.getMaxX(), room.getMaxY(), ink.px(3)), 8);
        spots.take(between(x, y, x, room.getMaxY(), ink.px(3)), 8);
        spots.take(between(room.getMaxX(), y, room.getMaxX(), room.getMaxY(), ink.px(3)), 8);
    }

    private void take(Run run) {
        List<Point> corners = run.corners();
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            spots.take(
                    between(
                            ink.view().xPx(from.xM()),
                            ink.view().yPx(from.yM()),
                            ink.view().xPx(to.xM()),
                            ink.view().yPx(to.yM()),
                            ink.mark(6)),
                    1.5);
        }
    }

    private static Rectangle2D between(double x1, double y1, double x2, double y2, double by) {
        Rectangle2D.Double box = new Rectangle2D.Double(x1, y1, 0, 0);
        box.add(x2, y2);
        return Marks.outset(box, by);
    }

    static Rectangle2D around(double x, double y, double by) {
        return new Rectangle2D.Double(x - by, y - by, 2 * by, 2 * by);
    }
}
