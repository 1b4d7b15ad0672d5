package lungfish.desktop;

import java.util.ArrayList;
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
import lungfish.edit.RoomEdits;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shell;

/** A point by which the one chosen rack, pipe or wall is pulled into another shape. */
sealed interface Grip {
    double xM();

    double yM();

    /** What comes of pulling it there. */
    Attempt pulled(Room room, SnappedPoint to);

    /** What moves, and so draws nothing to itself. */
    Part moves();

    /** What lies next to it on its line: it comes in line with these, and its lengths are those to them. */
    default List<Point> neighbours() {
        return List.of();
    }

    /** The run that it belongs to, if it does. */
    default Optional<Run> run() {
        return Optional.empty();
    }

    default Sketch.Stroke stroke() {
        return new Sketch.Handle(xM(), yM());
    }

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
        public Part moves() {
            return Part.rack(rack.id());
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            Box floor = Box.between(
                    opposite.xM(), opposite.yM(), to.place().xM(), to.place().yM());
            return RackEdits.stretch(room, rack.id(), floor);
        }
    }

    /** A corner or an end of a pipe. */
    record OfRun(Run of, int number) implements Grip {
        private Point at() {
            return of.points().get(number);
        }

        @Override
        public double xM() {
            return at().xM();
        }

        @Override
        public double yM() {
            return at().yM();
        }

        @Override
        public Part moves() {
            return Part.corner(of.id(), number);
        }

        @Override
        public Optional<Run> run() {
            return Optional.of(of);
        }

        @Override
        public List<Point> neighbours() {
            List<Point> points = of.points();
            int last = points.size() - 1;
            List<Point> next = new ArrayList<>();
            if (number > 0 || of.closed()) {
                next.add(points.get(number > 0 ? number - 1 : last));
            }
            if (number < last || of.closed()) {
                next.add(points.get(number < last ? number + 1 : 0));
            }
            return next;
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            return MainEdits.placeCorner(room, of.id(), number, level(to, at().zM()));
        }
    }

    /** The middle of a leg, where a new corner is pulled out of it. */
    record OfLeg(Run of, int leg, Point at) implements Grip {
        @Override
        public double xM() {
            return at.xM();
        }

        @Override
        public double yM() {
            return at.yM();
        }

        @Override
        public Part moves() {
            return Part.run(of.id());
        }

        @Override
        public Optional<Run> run() {
            return Optional.of(of);
        }

        @Override
        public List<Point> neighbours() {
            return of.corners().subList(leg, leg + 2);
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            return MainEdits.bend(room, of.id(), leg, level(to, at.zM()));
        }

        @Override
        public Sketch.Stroke stroke() {
            return new Sketch.Knob(xM(), yM());
        }
    }

    /** An end of an inner wall: the other one stays. */
    record OfWall(int number, Shell.Wall wall, boolean isFirst) implements Grip {
        @Override
        public double xM() {
            return isFirst ? wall.fromXM() : wall.toXM();
        }

        @Override
        public double yM() {
            return isFirst ? wall.fromYM() : wall.toYM();
        }

        @Override
        public Part moves() {
            return Part.wall(number);
        }

        @Override
        public List<Point> neighbours() {
            return List.of(
                    isFirst ? new Point(wall.toXM(), wall.toYM(), 0) : new Point(wall.fromXM(), wall.fromYM(), 0));
        }

        @Override
        public Attempt pulled(Room room, SnappedPoint to) {
            double xM = to.place().xM();
            double yM = to.place().yM();
            return isFirst
                    ? RoomEdits.placeWall(room, number, xM, yM, wall.toXM(), wall.toYM())
                    : RoomEdits.placeWall(room, number, wall.fromXM(), wall.fromYM(), xM, yM);
        }
    }

    /** At its own height, unless it has come to rest on another pipe. */
    private static Point level(SnappedPoint to, double ownM) {
        Point at = to.place();
        return to.onto().isPresent() || to.closes() ? at : new Point(at.xM(), at.yM(), ownM);
    }

    /**
     * Those of what is chosen; none where several things are, but for corners of one pipe.
     *
     * @param leastLegM shorter legs have none in their middle: it would lie on their corners
     */
    static List<Grip> of(Room room, Selection chosen, double leastLegM) {
        boolean areCorners = chosen.isOnly(Part.Kind.CORNER)
                && chosen.parts().stream().map(Part::id).distinct().count() == 1;
        Optional<Part> one = areCorners || chosen.parts().size() == 1 ? chosen.lead() : Optional.empty();
        return one.stream()
                .flatMap(part -> switch (part.kind()) {
                    case RACK -> ofRacks(room, part);
                    case RUN, CORNER -> ofRuns(room, part.id(), leastLegM);
                    case WALL -> ofWalls(room, part.number());
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

    private static Stream<Grip> ofRuns(Room room, String id, double leastLegM) {
        return room.runs().stream()
                .filter(run -> run.id().text().equals(id))
                .flatMap(run -> Stream.concat(
                        IntStream.range(0, run.points().size()).mapToObj(i -> new OfRun(run, i)),
                        legs(run, leastLegM)));
    }

    private static Stream<Grip> legs(Run run, double leastLegM) {
        List<Point> corners = run.corners();
        return IntStream.range(0, corners.size() - 1)
                .filter(i -> Math.hypot(
                                corners.get(i + 1).xM() - corners.get(i).xM(),
                                corners.get(i + 1).yM() - corners.get(i).yM())
                        >= leastLegM)
                .mapToObj(i -> new OfLeg(run, i, corners.get(i).towards(corners.get(i + 1), 0.5)));
    }

    private static Stream<Grip> ofWalls(Room room, int number) {
        return room.shell().walls().stream()
                .skip(number)
                .limit(1)
                .flatMap(wall -> Stream.of(new OfWall(number, wall, true), new OfWall(number, wall, false)));
    }
}
