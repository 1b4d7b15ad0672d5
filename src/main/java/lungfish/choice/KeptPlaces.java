package lungfish.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lungfish.edit.TapEdits;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Spot;
import lungfish.plan.Planner;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/**
 * Another layout moves no tap: an outlet, a gang or a blower that takes the nearest point of the pipe, and would take
 * another now, is held where it was.
 */
final class KeptPlaces {
    /** Places nearer than this are the same. */
    private static final double SAME_M = 2e-3;

    private final Planner planner;
    private final Room room;
    private final PipedRoom piped;

    KeptPlaces(Planner planner, Room room, PipedRoom piped) {
        this.planner = planner;
        this.room = room;
        this.piped = piped;
    }

    /** The change, done so that all stays in its place. */
    Optional<Room> through(Change change) {
        Optional<Room> free = change.of(room);
        return free.flatMap(planner::piped).flatMap(after -> {
            Room held = held(after);
            return held.equals(room) ? free : change.of(held);
        });
    }

    /** Another layout for a room, if the room can have it. */
    @FunctionalInterface
    interface Change {
        Optional<Room> of(Room room);
    }

    private Room held(PipedRoom after) {
        List<OutletId> moved = new ArrayList<>();
        for (int i = 0; i < piped.needs().size(); i++) {
            String was = piped.network().drops().get(i).node();
            String is = after.network().drops().get(i).node();
            if (differ(piped.spots().get(was), after.spots().get(is))) {
                moved.add(piped.needs().get(i).id());
            }
        }
        Room outlets = moved.isEmpty()
                ? room
                : TapEdits.pin(room, moved).edit().map(edit -> edit.of(room)).orElse(room);
        return blowers(gangs(outlets, after), after);
    }

    private Room gangs(Room outlets, PipedRoom after) {
        Map<String, Pipe> was = pipes(piped);
        Map<String, Pipe> is = pipes(after);
        return outlets.withGangs(outlets.gangs().stream()
                .map(gang -> movedEnd(was.get(feeder(gang)), is.get(feeder(gang)), after, Pipe::from)
                        .map(tap -> gang.tappedAt(Optional.of(tap)))
                        .orElse(gang))
                .toList());
    }

    private static String feeder(Gang gang) {
        return "gang " + gang.id().text();
    }

    private Room blowers(Room others, PipedRoom after) {
        Map<BlowerId, Outlet.OnRun> moved = new HashMap<>();
        Map<String, Pipe> was = pipes(piped);
        Map<String, Pipe> is = pipes(after);
        piped.blowerNodes().forEach((id, node) -> movedEnd(was.get(node), is.get(node), after, Pipe::to)
                .ifPresent(tap -> moved.put(id, tap)));
        List<Blower> blowers = new ArrayList<>(others.blowers());
        if (others.blowers(Blower.Role.PLANNED).isEmpty()) {
            moved.keySet().forEach(id -> blowers.add(Blower.planned(id)));
        }
        blowers.replaceAll(blower ->
                moved.containsKey(blower.id()) ? blower.feeding(Optional.of(moved.get(blower.id()))) : blower);
        return others.withBlowers(blowers);
    }

    private static Map<String, Pipe> pipes(PipedRoom piped) {
        Map<String, Pipe> pipes = new HashMap<>();
        piped.network().pipes().forEach(pipe -> pipes.put(pipe.id(), pipe));
        return pipes;
    }

    /** Where a feeder or a hose meets the pipe, if it has moved. */
    private Optional<Outlet.OnRun> movedEnd(
            @Nullable Pipe was, @Nullable Pipe is, PipedRoom after, Function<Pipe, String> end) {
        if (was == null || is == null) {
            return Optional.empty();
        }
        Spot before = piped.spots().get(end.apply(was));
        return before != null && differ(before, after.spots().get(end.apply(is)))
                ? before.run().map(run -> new Outlet.OnRun(run, before.alongM()))
                : Optional.empty();
    }

    private static boolean differ(@Nullable Spot before, @Nullable Spot now) {
        return before != null && now != null && before.place().distanceM(now.place()) > SAME_M;
    }
}
