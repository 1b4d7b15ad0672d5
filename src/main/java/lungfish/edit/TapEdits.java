package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Seat;

/** Which tap feeds which outlet. An outlet of which nothing is said leaves the pipe at its nearest point. */
public final class TapEdits {
    private TapEdits() {}

    /** A tap of its own, there, for each of these outlets. */
    public static Attempt hang(Room room, Collection<OutletId> ids, Outlet.OnRun at) {
        return Find.run(room, at.run().text()).isEmpty()
                ? Refused.nothing("pipe")
                : checked(room, ids, "Move the tap of ", new Outlet.OnRun(at.run(), clamped(room, at)));
    }

    /** A tap of its own for each of these outlets, on that pipe, where it is nearest to the outlet. */
    public static Attempt onto(Room room, Collection<OutletId> ids, RunId pipe) {
        Optional<Run> run = Find.run(room, pipe.text()).filter(Sound::isLine);
        if (run.isEmpty()) {
            return Refused.nothing("pipe");
        }
        Map<OutletId, Outlet.Tap> taps = new HashMap<>();
        room.seats().forEach(seat -> taps.put(seat.outlet().id(), Seats.on(run.get(), seat.rim())));
        return OutletEdits.change(
                room,
                ids,
                "Move to " + Words.run(run.get()) + " the tap of ",
                outlet -> outlet.tappedAt(Optional.ofNullable(taps.get(outlet.id()))));
    }

    private static double clamped(Room room, Outlet.OnRun at) {
        double lengthM = Find.run(room, at.run().text()).orElseThrow().lengthM();
        return at.atM() >= 0 ? Math.min(at.atM(), lengthM) : 0;
    }

    /** On a gang that is there. */
    public static Attempt hang(Room room, Collection<OutletId> ids, GangId gang) {
        return Find.gang(room, gang.text()).isEmpty()
                ? Refused.nothing("gang")
                : checked(room, ids, "Hang on a gang: ", new Outlet.OnGang(gang));
    }

    private static Attempt checked(Room room, Collection<OutletId> ids, String verb, Outlet.Tap tap) {
        return OutletEdits.change(room, ids, verb, outlet -> outlet.tappedAt(Optional.of(tap)));
    }

    /** At the nearest point of the pipe, wherever outlet and pipe go. */
    public static Attempt nearest(Room room, Collection<OutletId> ids) {
        return OutletEdits.change(room, ids, "Hang on the nearest pipe: ", outlet -> outlet.tappedAt(Optional.empty()));
    }

    /** Where the nearest point of the pipe is now: from now on the tap stays there. */
    public static Attempt pin(Room room, Collection<OutletId> ids) {
        Map<OutletId, Outlet.Tap> taps = new HashMap<>();
        for (Seat seat : room.seats()) {
            if (ids.contains(seat.outlet().id())) {
                Seats.of(room, seat).ifPresent(tap -> taps.put(seat.outlet().id(), tap));
            }
        }
        return taps.isEmpty()
                ? Refused.because("There is no pipe to hold a tap.", "Draw the main first.")
                : OutletEdits.change(
                        room,
                        ids,
                        "Keep the tap of ",
                        outlet -> outlet.tappedAt(
                                Optional.ofNullable(taps.get(outlet.id())).or(outlet::tap)));
    }

    /** A new gang above the middle of the tanks that it feeds, and these outlets on it. */
    public static Attempt gang(Room room, Collection<OutletId> ids, Gang.Kind kind) {
        List<Point> rims = room.seats().stream()
                .filter(seat -> ids.contains(seat.outlet().id()))
                .map(Seat::rim)
                .toList();
        return gang(room, ids, kind, new Point(mean(rims, Point::xM), mean(rims, Point::yM), mean(rims, Point::zM)));
    }

    private static double mean(List<Point> points, ToDoubleFunction<Point> along) {
        return Metres.clean(points.stream().mapToDouble(along).average().orElse(0));
    }

    /** A new gang there, and these outlets on it; its feeder leaves the pipe at the nearest point. */
    public static Attempt gang(Room room, Collection<OutletId> ids, Gang.Kind kind, Point place) {
        List<Outlet> outlets = Find.outlets(room, ids);
        return outlets.isEmpty()
                ? Refused.nothing("outlet")
                : Edit.tried(room, "Gang " + PartWords.outlets(outlets), before -> ganged(before, ids, kind, place));
    }

    private static Room ganged(Room room, Collection<OutletId> ids, Gang.Kind kind, Point place) {
        GangId id = new GangId(Fresh.gangs(room).like("gang"));
        List<Gang> gangs = new ArrayList<>(room.gangs());
        gangs.add(new Gang(id, kind, place, Optional.empty(), Optional.empty()));
        return Each.outlet(
                room.withGangs(gangs),
                Each.where(
                        outlet -> ids.contains(outlet.id()),
                        outlet -> outlet.tappedAt(Optional.of(new Outlet.OnGang(id)))));
    }
}
