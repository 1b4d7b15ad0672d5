package lungfish.piping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/**
 * Where a run of pipe is cut to be built: at its elbows, at the fittings drawn on it, where other runs leave it, at its ends.
 *
 * @param marks in order along the run
 */
public record RunMarks(Run run, List<Mark> marks) {
    /** What a mark is to the run. */
    public enum Kind {
        /** A fitting of this run: an elbow, a tee that another run leaves by, what is drawn on it. */
        FITTING,
        /** An end of this run, in a fitting of another run. */
        INTO_OTHER,
        /** An end that a blower's hose comes to. */
        FED,
        /** An end where nothing is drawn: it must be capped. */
        OPEN
    }

    /**
     * One place where the run is cut.
     *
     * @param alongM distance of the fitting's centre along the run
     * @param fitting class of the fitting there; empty at an end that a blower feeds
     * @param other the run that is joined there
     */
    public record Mark(double alongM, Kind kind, String fitting, Optional<RunId> other) {}

    /** Two ways count as one straight pipe from here: a tee can take both. */
    private static final double STRAIGHT_DEGREES = 160;

    /** Far enough from a corner to see which way the pipe goes. */
    private static final double LOOK_M = 0.01;

    public RunMarks {
        marks = List.copyOf(marks);
    }

    /**
     * The marks of every run of a room, in the order drawn.
     *
     * @param feeds where the hoses of the blowers come to the pipe
     */
    public static List<RunMarks> of(Room room, List<Outlet.OnRun> feeds) {
        Layout layout = new Layout(room);
        List<Joints.Joint> joints = new Joints(layout).joints();
        return layout.lines().stream()
                .map(line -> new Making(layout, joints, feeds, line).made())
                .toList();
    }

    /** Finds the marks of one run. */
    private static final class Making {
        private final Layout layout;
        private final List<Joints.Joint> joints;
        private final List<Outlet.OnRun> feeds;
        private final RunLine line;
        private final List<Mark> marks = new ArrayList<>();

        Making(Layout layout, List<Joints.Joint> joints, List<Outlet.OnRun> feeds, RunLine line) {
            this.layout = layout;
            this.joints = joints;
            this.feeds = feeds;
            this.line = line;
        }

        RunMarks made() {
            joints.stream().filter(joint -> isOwn(joint.onto())).forEach(this::addJoined);
            feeds.stream().filter(feed -> feed.run().equals(id())).forEach(this::addFed);
            line.bends().stream()
                    .filter(bend -> !isTakenByTee(bend.alongM()))
                    .forEach(bend -> add(bend.alongM(), Kind.FITTING, RunLosses.elbow(bend)));
            line.run().fittings().forEach(fitting -> add(fitting.atM(), Kind.FITTING, fitting.kind()));
            line.ends().forEach(this::addEnd);
            marks.sort(Comparator.comparingDouble(Mark::alongM));
            return new RunMarks(line.run(), marks);
        }

        private RunId id() {
            return line.run().id();
        }

        private boolean isOwn(Stop stop) {
            return stop.run().equals(id());
        }

        private void add(double alongM, Kind kind, String fitting) {
            marks.add(new Mark(wrapped(alongM), kind, fitting, Optional.empty()));
        }

        private double wrapped(double alongM) {
            double within = Math.max(0, Math.min(alongM, line.lengthM()));
            return line.run().closed() && within >= line.lengthM() - LOOK_M ? 0 : within;
        }

        /** Another run comes here: in mid-run a tee, at this run's end what the angle asks for, or a tee where several come. */
        private void addJoined(Joints.Joint joint) {
            double along = joint.onto().alongM();
            Optional<Double> end = endNear(along);
            long here = joints.stream()
                    .filter(each -> isOwn(each.onto()) && Math.abs(each.onto().alongM() - along) <= Run.TOUCH_M)
                    .count();
            if (end.isPresent() && here > 1 && hasMarkAt(end.get())) {
                return;
            }
            String fitting = end.isPresent() && here == 1 ? elbowOrCoupling(joint, end.get()) : RunLosses.BRANCH;
            double at = end.orElseGet(() -> cornerNear(along).orElse(along));
            marks.add(new Mark(
                    wrapped(at), Kind.FITTING, fitting, Optional.of(joint.end().run())));
        }

        private boolean hasMarkAt(double alongM) {
            return marks.stream().anyMatch(mark -> Math.abs(mark.alongM() - alongM) <= Run.TOUCH_M);
        }

        private Optional<Double> endNear(double alongM) {
            return line.ends().stream()
                    .map(Stop::alongM)
                    .filter(end -> Math.abs(end - alongM) <= Run.TOUCH_M)
                    .findFirst();
        }

        /** A joint within a fitting's width of a corner is at the corner. */
        private Optional<Double> cornerNear(double alongM) {
            return line.bends().stream()
                    .map(RunLine.Bend::alongM)
                    .filter(corner -> apartM(corner, alongM) <= Run.TOUCH_M)
                    .findFirst();
        }

        private double apartM(double one, double other) {
            double apart = Math.abs(one - other);
            return line.run().closed() ? Math.min(apart, line.lengthM() - apart) : apart;
        }

        private String elbowOrCoupling(Joints.Joint joint, double end) {
            Point inner = line.at(end == 0 ? LOOK_M : end - LOOK_M);
            double turn = 180 - degrees(inner, line.at(end), beyond(joint.end()));
            return turn < 180 - STRAIGHT_DEGREES ? "coupling" : RunLosses.elbow(new RunLine.Bend(end, turn));
        }

        /** A point on the joined run, a little way from its end. */
        private Point beyond(Stop end) {
            RunLine other = layout.line(end.run());
            return other.at(end.alongM() == 0 ? LOOK_M : end.alongM() - LOOK_M);
        }

        /** At a corner where a joined run goes on straight, the tee turns the pipe: there is no elbow. */
        private boolean isTakenByTee(double corner) {
            return joints.stream()
                    .filter(joint -> isOwn(joint.onto()) && apartM(joint.onto().alongM(), corner) <= Run.TOUCH_M)
                    .anyMatch(joint -> goesStraight(corner, joint.end()));
        }

        private boolean goesStraight(double corner, Stop end) {
            double length = line.lengthM();
            Point before = line.at(corner < LOOK_M ? length - LOOK_M : corner - LOOK_M);
            Point after = line.at(corner + LOOK_M);
            Point away = beyond(end);
            Point centre = line.at(corner);
            return degrees(before, centre, away) >= STRAIGHT_DEGREES
                    || degrees(after, centre, away) >= STRAIGHT_DEGREES;
        }

        private void addFed(Outlet.OnRun feed) {
            Optional<Double> end = endNear(feed.atM());
            marks.add(new Mark(
                    wrapped(end.orElse(feed.atM())),
                    end.isPresent() ? Kind.FED : Kind.FITTING,
                    end.isPresent() ? "" : RunLosses.BRANCH,
                    Optional.empty()));
        }

        private void addEnd(Stop end) {
            Optional<Joints.Joint> into =
                    joints.stream().filter(joint -> joint.end().equals(end)).findFirst();
            if (into.isPresent()) {
                RunId onto = into.get().onto().run();
                marks.add(new Mark(end.alongM(), Kind.INTO_OTHER, RunLosses.BRANCH, Optional.of(onto)));
            } else if (!hasMarkAt(end.alongM())) {
                marks.add(new Mark(end.alongM(), Kind.OPEN, "cap", Optional.empty()));
            }
        }

        /** The angle at a point between two others; 180: straight on. */
        private static double degrees(Point one, Point centre, Point other) {
            double a = one.distanceM(centre);
            double b = other.distanceM(centre);
            double c = one.distanceM(other);
            double cosine = (a * a + b * b - c * c) / (2 * a * b);
            return Math.toDegrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
        }
    }

    /** How far along the run the last corner before a place is; 0 before the first. */
    public double cornerBeforeM(double alongM) {
        List<Point> corners = run.corners();
        double at = 0;
        double last = 0;
        for (int i = 1; i < corners.size() && at <= alongM; i++) {
            last = at;
            at += corners.get(i - 1).distanceM(corners.get(i));
        }
        return at <= alongM ? at : last;
    }

    /** The number of that corner, from 1 as drawn. */
    public int cornerNumber(double alongM) {
        List<Point> corners = run.corners();
        double at = 0;
        int number = 1;
        for (int i = 1; i < corners.size(); i++) {
            at += corners.get(i - 1).distanceM(corners.get(i));
            number = at <= alongM && i < run.points().size() ? i + 1 : number;
        }
        return number;
    }
}
