package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.quantity.Dimension;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** Edits of runs of pipe. New ones: {@link PipeDrawing}; what is fitted into them: {@link FittingEdits}; they are moved by {@link Moves}. */
public final class MainEdits {
    /** What is said where other than one pipe is to be changed. */
    public static final Refused NEEDS_ONE = Refused.because("That is done to one pipe.", "Click on it first.");

    private MainEdits() {}

    /** Joins the last corner of a run to its first. */
    public static Attempt close(Room room, RunId id) {
        return reshape(room, List.of(id), "Close ", run -> run.through(meeting(run.points()), true));
    }

    /** Without a last corner that lies on the first already. */
    private static List<Point> meeting(List<Point> points) {
        int last = points.size() - 1;
        boolean meets = last > 0 && points.get(0).distanceM(points.get(last)) <= Run.TOUCH_M;
        return meets ? points.subList(0, last) : points;
    }

    /** Takes out the leg between the last corner of a loop and its first. */
    public static Attempt open(Room room, RunId id) {
        return reshape(room, List.of(id), "Open ", run -> run.through(run.points(), false));
    }

    /** One more corner in a run, at a distance along it, m: the pipe stays where it is until the corner is moved. */
    public static Attempt insertCorner(Room room, RunId id, double atM) {
        return reshape(room, List.of(id), "Insert a corner into ", run -> withCorner(run, atM));
    }

    private static Run withCorner(Run run, double atM) {
        List<Point> points = new ArrayList<>(run.points());
        Point corner = run.at(atM);
        double before = 0;
        List<Point> corners = run.corners();
        int leg = 1;
        while (leg < corners.size() - 1 && before + corners.get(leg - 1).distanceM(corners.get(leg)) < atM) {
            before += corners.get(leg - 1).distanceM(corners.get(leg));
            leg++;
        }
        points.add(leg, Metres.clean(corner));
        return run.through(points, run.closed());
    }

    /** One more corner in a leg of a run, pulled there; legs are counted from 0. */
    public static Attempt bend(Room room, RunId id, int leg, Point place) {
        boolean isThere = Find.run(room, id.text())
                .filter(run -> leg >= 0 && leg < run.corners().size() - 1)
                .isPresent();
        return isThere
                ? reshape(room, List.of(id), "Insert a corner into ", run -> bent(run, leg, place))
                : Refused.nothing("pipe");
    }

    private static Run bent(Run run, int leg, Point place) {
        List<Point> points = new ArrayList<>(run.points());
        points.add(leg + 1, Metres.clean(place));
        return run.through(points, run.closed());
    }

    /** The number that the corner of {@link #insertCorner} has. */
    public static int cornerAt(Run run, double atM) {
        List<Point> before = run.points();
        List<Point> after = withCorner(run, atM).points();
        int number = 0;
        while (number < before.size() && after.get(number).equals(before.get(number))) {
            number++;
        }
        return number;
    }

    /** Puts a corner or an end of a run there. An end that meets the other end closes the loop. */
    public static Attempt placeCorner(Room room, RunId id, int number, Point place) {
        boolean isThere = Find.run(room, id.text())
                .filter(run -> number >= 0 && number < run.points().size())
                .isPresent();
        return isThere
                ? reshape(room, List.of(id), "Move a corner of ", run -> placed(run, number, place))
                : Refused.nothing("corner");
    }

    private static Run placed(Run run, int number, Point place) {
        List<Point> points = new ArrayList<>(run.points());
        boolean closes = otherEnd(run, number)
                .filter(end -> end.distanceM(place) <= Run.TOUCH_M)
                .isPresent();
        if (closes) {
            points.remove(number);
        } else {
            points.set(number, place);
        }
        return run.through(points, run.closed() || closes);
    }

    /** The end of an open run that an end with this number would meet; empty where that makes no loop. */
    static Optional<Point> otherEnd(Run run, int number) {
        int last = run.points().size() - 1;
        boolean isEnd = !run.closed() && last >= 3 && (number == 0 || number == last);
        return isEnd ? Optional.of(run.points().get(last - number)) : Optional.empty();
    }

    /** Puts whole runs at one height above the floor, m. Risers keep their ends. */
    public static Attempt level(Room room, Collection<RunId> ids, double zM) {
        return reshape(room, ids, "Set the height of ", run -> run.role() == Run.Role.RISER ? run : level(run, zM));
    }

    private static Run level(Run run, double zM) {
        return run.through(
                run.points().stream()
                        .map(point -> new Point(point.xM(), point.yM(), zM))
                        .toList(),
                run.closed());
    }

    public static Attempt size(Room room, Collection<RunId> ids, PipeSize size) {
        return change(room, ids, "Change the size of ", run -> run.sized(size.id()));
    }

    /** The next larger size of the same standard for each, or with -1 the next smaller one. */
    public static Attempt resize(Room room, Collection<RunId> ids, Catalogue catalogue, int steps) {
        Map<String, String> next = new HashMap<>();
        for (Run run : Find.runs(room, ids)) {
            catalogue
                    .pipe(run.size())
                    .flatMap(size -> next(catalogue, size, steps))
                    .ifPresent(size -> next.put(run.size(), size.id()));
        }
        return next.isEmpty() && !Find.runs(room, ids).isEmpty()
                ? Refused.because(
                        "The catalogue has no " + (steps > 0 ? "larger" : "smaller") + " pipe of that standard.",
                        "Choose another kind of pipe beside the outlets.")
                : change(room, ids, "Change the size of ", run -> run.sized(next.getOrDefault(run.size(), run.size())));
    }

    private static Optional<PipeSize> next(Catalogue catalogue, PipeSize from, int steps) {
        return catalogue.pipes().stream()
                .filter(size -> size.standard().equals(from.standard()))
                .filter(size -> steps * (size.outsideM() - from.outsideM()) > 0)
                .min(Comparator.comparingDouble(size -> steps * (size.outsideM() - from.outsideM())));
    }

    /** One more corner in the middle of the longest leg. */
    public static Attempt insertCorner(Room room, RunId id) {
        return Find.run(room, id.text())
                .filter(Sound::isLine)
                .map(run -> insertCorner(room, id, middleOfTheLongest(run.corners())))
                .orElse(Refused.nothing("pipe"));
    }

    private static double middleOfTheLongest(List<Point> corners) {
        double before = 0;
        double longest = 0;
        double middle = 0;
        for (int i = 1; i < corners.size(); i++) {
            double leg = corners.get(i - 1).distanceM(corners.get(i));
            if (leg > longest) {
                longest = leg;
                middle = before + leg / 2;
            }
            before += leg;
        }
        return middle;
    }

    public static Attempt role(Room room, Collection<RunId> ids, Run.Role role) {
        return change(room, ids, "Change what it is for: ", run -> run.as(role));
    }

    /** How warm the place is that it passes, K; empty: as the room. */
    public static Attempt surroundingsK(Room room, Collection<RunId> ids, OptionalDouble kelvin) {
        boolean isAir = kelvin.isEmpty() || RoomValues.AIR_K.hold(kelvin.getAsDouble());
        return isAir
                ? change(room, ids, "Set what is around ", run -> run.surroundedBy(kelvin))
                : RoomValues.AIR_K.refused("The place of a pipe", kelvin.getAsDouble(), Dimension.TEMPERATURE);
    }

    public static Attempt rename(Room room, RunId id, String name) {
        Optional<Refused> trouble = Names.trouble(name);
        return trouble.isPresent() ? trouble.get() : change(room, List.of(id), "Rename ", run -> run.named(name));
    }

    /** These runs in the place of those of the same ids: what sits on the pipe stays where it was, or as near as it can. */
    public static Attempt reshape(Room room, String done, List<Run> those) {
        return Edit.tried(room, done, before -> Reshaping.of(before, those));
    }

    private static Attempt reshape(Room room, Collection<RunId> ids, String verb, UnaryOperator<Run> change) {
        return tried(
                room,
                ids,
                verb,
                before -> Reshaping.of(
                        before, Find.runs(before, ids).stream().map(change).toList()));
    }

    static Attempt change(Room room, Collection<RunId> ids, String verb, UnaryOperator<Run> change) {
        return tried(
                room,
                ids,
                verb,
                before -> before.withRuns(
                        Each.changed(before.runs(), Each.where(run -> ids.contains(run.id()), change))));
    }

    private static Attempt tried(Room room, Collection<RunId> ids, String verb, UnaryOperator<Room> change) {
        List<Run> runs = Find.runs(room, ids);
        return runs.isEmpty() ? Refused.nothing("pipe") : Edit.tried(room, verb + PartWords.runs(runs), change);
    }
}
