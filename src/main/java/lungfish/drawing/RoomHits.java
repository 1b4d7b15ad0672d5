package lungfish.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.drawing.SceneParts.FittingPart;
import lungfish.drawing.SceneParts.TankPart;
import lungfish.drawing.SceneParts.TapPart;
import lungfish.reason.PartId;
import lungfish.room.Point;
import lungfish.room.Run;
import lungfish.room.Shell;

/** Finds what is at one point of a scene. */
final class RoomHits {
    private final RoomScene scene;
    private final double xM;
    private final double yM;
    private final double reachM;

    RoomHits(RoomScene scene, double xM, double yM, double reachM) {
        this.scene = scene;
        this.xM = xM;
        this.yM = yM;
        this.reachM = reachM;
    }

    Optional<Hit> first() {
        return Stream.of(outlet(), onPipe(), gang(), blower(), listener(), run(), tank(), rack(), door(), wall())
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Hit> outlet() {
        return nearest(scene.outlets(), part -> away(part.xM(), part.yM()))
                .map(part -> hit(Hit.Kind.OUTLET, part.part()));
    }

    /** The nearer of a tap and a fitting. */
    private Optional<Hit> onPipe() {
        Optional<TapPart> tap = nearest(scene.taps(), part -> away(part.xM(), part.yM()));
        Optional<FittingPart> fitting = nearest(scene.fittings(), part -> away(part.xM(), part.yM()));
        double toTap = tap.map(part -> away(part.xM(), part.yM())).orElse(Double.POSITIVE_INFINITY);
        return fitting.filter(part -> away(part.xM(), part.yM()) <= toTap)
                .map(part -> hit(Hit.Kind.FITTING, part.run().id().part(), part.number()))
                .or(() -> tap.map(part -> hit(Hit.Kind.TAP, part.hangs().get(0))));
    }

    private Optional<Hit> gang() {
        return nearest(scene.gangs(), part -> away(part.xM(), part.yM())).map(part -> hit(Hit.Kind.GANG, part.part()));
    }

    /** A blower is drawn larger than a mark. */
    private Optional<Hit> blower() {
        return nearest(scene.blowers(), part -> away(part.xM(), part.yM()) / 2)
                .map(part -> hit(Hit.Kind.BLOWER, part.part()));
    }

    private Optional<Hit> listener() {
        return scene.room()
                .listener()
                .filter(ear -> away(ear.place().xM(), ear.place().yM()) <= 2 * reachM)
                .map(ear -> hit(Hit.Kind.LISTENER, PartId.ROOM));
    }

    private Optional<Hit> run() {
        return nearest(scene.room().runs(), this::awayFromRun)
                .map(run -> hit(Hit.Kind.RUN, run.id().part()));
    }

    private Optional<Hit> tank() {
        return scene.racks().stream()
                .flatMap(rack -> rack.tanks().stream())
                .filter(tank -> tank.boxM().contains(xM, yM))
                .map(TankPart::part)
                .findFirst()
                .map(part -> hit(Hit.Kind.TANK, part));
    }

    private Optional<Hit> rack() {
        return scene.racks().stream()
                .filter(rack -> rack.outlineM().contains(xM, yM))
                .findFirst()
                .map(rack -> hit(Hit.Kind.RACK, rack.rack().id().part()));
    }

    private Optional<Hit> door() {
        List<Shell.Door> doors = scene.room().shell().doors();
        return nearest(numbers(doors), i -> awayFromDoor(doors.get(i))).map(i -> hit(Hit.Kind.DOOR, PartId.ROOM, i));
    }

    private double awayFromDoor(Shell.Door door) {
        Rectangle2D gap = FloorPainter.gapM(door, scene.room().shell());
        return Line2D.ptSegDist(gap.getX(), gap.getY(), gap.getMaxX(), gap.getMaxY(), xM, yM);
    }

    private Optional<Hit> wall() {
        List<Shell.Wall> walls = scene.room().shell().walls();
        return nearest(numbers(walls), i -> awayFromWall(walls.get(i))).map(i -> hit(Hit.Kind.WALL, PartId.ROOM, i));
    }

    private double awayFromWall(Shell.Wall wall) {
        return Line2D.ptSegDist(wall.fromXM(), wall.fromYM(), wall.toXM(), wall.toYM(), xM, yM);
    }

    private static List<Integer> numbers(List<?> things) {
        return IntStream.range(0, things.size()).boxed().toList();
    }

    private Hit hit(Hit.Kind kind, PartId part) {
        return hit(kind, part, 0);
    }

    private Hit hit(Hit.Kind kind, PartId part, int number) {
        return new Hit(kind, part, number, xM, yM);
    }

    private <T> Optional<T> nearest(List<T> parts, ToDoubleFunction<T> awayM) {
        return parts.stream()
                .filter(part -> awayM.applyAsDouble(part) <= reachM)
                .min(Comparator.comparingDouble(awayM));
    }

    private double away(double otherXM, double otherYM) {
        return Point2D.distance(xM, yM, otherXM, otherYM);
    }

    private double awayFromRun(Run run) {
        List<Point> corners = run.corners();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            least = Math.min(least, Line2D.ptSegDist(from.xM(), from.yM(), to.xM(), to.yM(), xM, yM));
        }
        return least;
    }
}
