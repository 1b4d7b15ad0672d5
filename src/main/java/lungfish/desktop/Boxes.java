package lungfish.desktop;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.edit.Box;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Point;
import lungfish.room.Room;

/** What chosen things take of the floor. */
final class Boxes {
    private Boxes() {}

    /** Around all chosen racks, machines and pipes, and the listener; empty where none of these is chosen. */
    static Optional<Box> around(Room room, Selection chosen) {
        return Stream.of(racks(room, chosen), points(room, chosen))
                .flatMap(boxes -> boxes)
                .reduce(Boxes::both);
    }

    private static Stream<Box> racks(Room room, Selection chosen) {
        return room.racks().stream()
                .filter(rack -> chosen.has(Part.rack(rack.id())))
                .map(Box::of);
    }

    private static Stream<Box> points(Room room, Selection chosen) {
        Stream<Point> machines = room.blowers().stream()
                .filter(blower -> chosen.has(Part.blower(blower.id())))
                .flatMap(blower -> blower.siting().place().stream());
        Stream<Point> corners = room.runs().stream()
                .filter(run -> chosen.has(Part.run(run.id())))
                .flatMap(run -> run.points().stream());
        Stream<Point> ear = room.listener().stream()
                .filter(there -> chosen.has(Part.listener()))
                .map(there -> there.place());
        return Stream.of(machines, corners, ear)
                .flatMap(points -> points)
                .map(point -> new Box(point.xM(), point.yM(), point.xM(), point.yM()));
    }

    private static Box both(Box one, Box other) {
        return new Box(
                Math.min(one.fromXM(), other.fromXM()),
                Math.min(one.fromYM(), other.fromYM()),
                Math.max(one.toXM(), other.toXM()),
                Math.max(one.toYM(), other.toYM()));
    }

    static Rectangle2D shape(Box box) {
        return new Rectangle2D.Double(box.fromXM(), box.fromYM(), box.spanXM(), box.spanYM());
    }

    /** From the first, clockwise: the one two further on lies opposite. */
    static List<Point> corners(Box box) {
        return List.of(
                new Point(box.fromXM(), box.fromYM(), 0),
                new Point(box.toXM(), box.fromYM(), 0),
                new Point(box.toXM(), box.toYM(), 0),
                new Point(box.fromXM(), box.toYM(), 0));
    }
}
