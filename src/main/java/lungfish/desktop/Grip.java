package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Box;
import lungfish.edit.MainEdits;
import lungfish.edit.Part;
import lungfish.edit.RackEdits;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;

/** A point by which the one chosen rack or pipe is pulled into another shape. */
sealed interface Grip {
    double xM();

    double yM();

    /** What comes of pulling it there. */
    Attempt pulled(Room room, SnappedPoint to);

    /** A corner of a rack: the opposite one stays. */
    record OfRack(Rack rack, Point corner, Point opposite) implements Grip {
        @Override
        public double xM() {
            return corner.xM();
        }

        @Override
        public double yM() {
            return corner.yM();
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            Box floor = Box.between(
                    opposite.xM(), opposite.yM(), to.place().xM(), to.place().yM());
            return RackEdits.stretch(room, rack.id(), floor);
        }
    }

    /** A corner or an end of a pipe. */
    record OfRun(Run run, int number) implements Grip {
        @Override
        public double xM() {
            return run.points().get(number).xM();
        }

        @Override
        public double yM() {
            return run.points().get(number).yM();
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            double heightM = to.onto().isPresent()
                    ? to.place().zM()
                    : run.points().get(number).zM();
            return MainEdits.placeCorner(
                    room,
                    run.id(),
                    number,
                    new Point(to.place().xM(), to.place().yM(), heightM));
        }
    }

    /** Those of what is chosen; none where several things are. */
    static List<Grip> of(Room room, Selection chosen) {
        Optional<Part> one = chosen.parts().size() == 1 ? chosen.lead() : Optional.empty();
        return one.stream()
                .flatMap(part -> switch (part.kind()) {
                    case RACK -> ofRacks(room, part);
                    case RUN -> ofRuns(room, part);
                    default -> Stream.<Grip>empty();
                })
                .toList();
    }

    private static Stream<Grip> ofRacks(Room room, Part part) {
        return room.racks().stream()
                .filter(rack -> Part.rack(rack.id()).equals(part))
                .flatMap(rack -> {
                    List<Point> corners = Boxes.corners(Box.of(rack));
                    return IntStream.range(0, corners.size())
                            .mapToObj(i -> new OfRack(rack, corners.get(i), corners.get((i + 2) % corners.size())));
                });
    }

    private static Stream<Grip> ofRuns(Room room, Part part) {
        return room.runs().stream()
                .filter(run -> Part.run(run.id()).equals(part))
                .flatMap(run -> IntStream.range(0, run.points().size()).mapToObj(i -> new OfRun(run, i)));
    }

    default Sketch.Stroke stroke() {
        return new Sketch.Handle(xM(), yM());
    }
}
