package lungfish.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/**
 * Puts runs of another shape in the place of those that were there. What sits on them stays where it was, or as near as
 * the new pipe allows; a run that is only carried elsewhere takes everything along. Ends of other runs that touched them
 * follow, so that a branch does not come off when its main is moved; and what touched those follows in turn.
 */
final class Reshaping {
    private static final double SAME_LEG_M = 1e-9;

    private final Map<RunId, Run> before = new HashMap<>();
    private final Map<RunId, Run> after = new HashMap<>();

    private Reshaping(Room room) {
        room.runs().forEach(run -> before.putIfAbsent(run.id(), run));
    }

    /** The room with these runs for those of the same ids. */
    static Room of(Room room, List<Run> changed) {
        Reshaping work = new Reshaping(room);
        changed.forEach(run -> work.after.put(run.id(), run));
        work.follow(room, new HashSet<>(work.after.keySet()));
        Room shaped = room.withRuns(Each.changed(room.runs(), work::shaped));
        return Seats.changed(shaped, work::seat);
    }

    private void follow(Room room, Set<RunId> moved) {
        Map<RunId, Run> followers = new HashMap<>();
        for (Run run : room.runs()) {
            if (!after.containsKey(run.id()) && !run.closed() && Sound.isLine(run)) {
                Run followed = following(run, moved);
                if (!followed.equals(run)) {
                    followers.put(run.id(), followed);
                }
            }
        }
        if (!followers.isEmpty()) {
            after.putAll(followers);
            follow(room, followers.keySet());
        }
    }

    private Run following(Run run, Set<RunId> moved) {
        List<Point> points = new ArrayList<>(run.points());
        for (int end : new int[] {0, points.size() - 1}) {
            points.set(end, following(points.get(end), moved));
        }
        return run.through(points, false);
    }

    /** Where an end goes: with the first of the moved runs that it touched. */
    private Point following(Point end, Set<RunId> moved) {
        for (Run old :
                moved.stream().flatMap(id -> Stream.ofNullable(before.get(id))).toList()) {
            Run.Nearest near = old.nearest(end);
            Run now = after.getOrDefault(old.id(), old);
            if (near.distanceM() <= Run.TOUCH_M && Sound.isLine(now)) {
                return Metres.clean(now.at(seat(old, now, near.alongM())));
            }
        }
        return end;
    }

    private Run shaped(Run run) {
        Run now = after.getOrDefault(run.id(), run);
        return now.equals(run)
                ? run
                : now.fitted(Each.changed(
                        now.fittings(),
                        fitting -> new Run.Fitting(fitting.kind(), seat(run, now, fitting.atM()), fitting.opening())));
    }

    private Outlet.OnRun seat(Outlet.OnRun seat) {
        Run old = before.get(seat.run());
        Run now = after.get(seat.run());
        return old == null || now == null ? seat : new Outlet.OnRun(seat.run(), seat(old, now, seat.atM()));
    }

    private static double seat(Run old, Run now, double atM) {
        boolean stays = !Sound.isLine(now) || sameLegs(old.corners(), now.corners());
        return stays ? atM : Metres.clean(now.nearest(old.at(atM)).alongM());
    }

    private static boolean sameLegs(List<Point> one, List<Point> other) {
        boolean same = one.size() == other.size();
        for (int i = 1; same && i < one.size(); i++) {
            double was = one.get(i - 1).distanceM(one.get(i));
            double is = other.get(i - 1).distanceM(other.get(i));
            same = Math.abs(was - is) <= SAME_LEG_M;
        }
        return same;
    }
}
