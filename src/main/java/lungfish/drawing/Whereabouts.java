package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lungfish.reason.PartId;
import lungfish.room.Point;
import lungfish.room.Run;

/** Finds where a part of the room lies on the drawing, so that a finding can lead there. */
final class Whereabouts {
    private final RoomScene scene;

    Whereabouts(RoomScene scene) {
        this.scene = scene;
    }

    Optional<Rectangle2D> of(PartId part) {
        return switch (part.kind()) {
            case OUTLET -> first(scene.outlets(), at -> at.part().equals(part), at -> spot(at.xM(), at.yM()));
            case GANG -> first(scene.gangs(), at -> at.part().equals(part), at -> spot(at.xM(), at.yM()));
            case BLOWER -> first(scene.blowers(), at -> at.part().equals(part), at -> spot(at.xM(), at.yM()));
            case RACK -> first(scene.racks(), at -> at.rack().id().part().equals(part), SceneParts.RackPart::outlineM);
            case TANK ->
                tanks().filter(at -> at.part().equals(part)).findFirst().map(SceneParts.TankPart::boxM);
            case RUN -> first(scene.room().runs(), run -> run.id().part().equals(part), Whereabouts::box);
            default -> Optional.empty();
        };
    }

    private Stream<SceneParts.TankPart> tanks() {
        return scene.racks().stream().flatMap(rack -> rack.tanks().stream());
    }

    private static <T> Optional<Rectangle2D> first(List<T> all, Predicate<T> isIt, Function<T, Rectangle2D> where) {
        return all.stream().filter(isIt).findFirst().map(where);
    }

    private static Rectangle2D spot(double xM, double yM) {
        return new Rectangle2D.Double(xM, yM, 0, 0);
    }

    private static Rectangle2D box(Run run) {
        List<Point> corners = run.corners();
        Rectangle2D box = spot(corners.get(0).xM(), corners.get(0).yM());
        corners.forEach(corner -> box.add(corner.xM(), corner.yM()));
        return box;
    }
}
