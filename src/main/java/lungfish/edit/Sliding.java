package lungfish.edit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Seat;

/** Moves what sits on a pipe along it: taps, feeds, fittings. A tap that was the nearest point by default is now where it was put. */
final class Sliding {
    private final Room room;
    private final Selection chosen;
    private final double dxM;
    private final double dyM;

    private Sliding(Room room, Selection chosen, double dxM, double dyM) {
        this.room = room;
        this.chosen = chosen;
        this.dxM = dxM;
        this.dyM = dyM;
    }

    static Room slid(Room room, Selection chosen, double dxM, double dyM) {
        Sliding work = new Sliding(room, chosen, dxM, dyM);
        Room taps = chosen.all(Part.Kind.TAP).findAny().isPresent() ? work.taps() : room;
        Room gangs = taps.withGangs(Each.changed(taps.gangs(), work::gang));
        Room feeds = gangs.withBlowers(Each.changed(gangs.blowers(), work::blower));
        return feeds.withRuns(Each.changed(feeds.runs(), work::fittings));
    }

    private Room taps() {
        Map<OutletId, Outlet.Tap> moved = new HashMap<>();
        for (Seat seat : room.seats()) {
            if (chosen.has(Part.tap(seat.outlet().id()))) {
                Seats.of(room, seat).ifPresent(tap -> moved.put(seat.outlet().id(), slid(tap)));
            }
        }
        return Each.outlet(
                room,
                outlet -> outlet.tappedAt(
                        Optional.ofNullable(moved.get(outlet.id())).or(outlet::tap)));
    }

    private Gang gang(Gang gang) {
        return chosen.has(Part.gangTap(gang.id()))
                ? gang.tappedAt(
                        gang.tap().or(() -> Seats.nearest(room, gang.place())).map(this::slid))
                : gang;
    }

    private Blower blower(Blower blower) {
        boolean meant = chosen.has(Part.feed(blower.id()));
        return meant
                ? blower.feeding(blower.feeds()
                        .or(() -> blower.siting().place().flatMap(place -> Seats.nearest(room, place)))
                        .map(this::slid))
                : blower;
    }

    private Outlet.OnRun slid(Outlet.OnRun seat) {
        return Find.run(room, seat.run().text())
                .filter(run -> !chosen.has(Part.run(run.id())))
                .map(run -> new Outlet.OnRun(run.id(), along(run, seat.atM())))
                .orElse(seat);
    }

    private Run fittings(Run run) {
        if (chosen.has(Part.run(run.id()))) {
            return run;
        }
        return run.fitted(IntStream.range(0, run.fittings().size())
                .mapToObj(i -> chosen.has(Part.fitting(run.id(), i))
                        ? slid(run, run.fittings().get(i))
                        : run.fittings().get(i))
                .toList());
    }

    private Run.Fitting slid(Run run, Run.Fitting fitting) {
        return new Run.Fitting(fitting.kind(), along(run, fitting.atM()), fitting.opening());
    }

    private double along(Run run, double atM) {
        return Metres.clean(run.nearest(run.at(atM).moved(dxM, dyM, 0)).alongM());
    }
}
