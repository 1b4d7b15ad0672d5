package lungfish.edit;

import java.util.Optional;
import java.util.function.UnaryOperator;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Seat;

/** The places on runs where something leaves or joins the pipe: taps of outlets and of gangs, feeds of blowers. */
final class Seats {
    private Seats() {}

    /** Changes all of them. */
    static Room changed(Room room, UnaryOperator<Outlet.OnRun> change) {
        Room outlets = Each.outlet(room, outlet -> outlet(outlet, change));
        Room gangs = outlets.withGangs(Each.changed(outlets.gangs(), gang -> gang(gang, change)));
        return gangs.withBlowers(Each.changed(gangs.blowers(), blower -> blower(blower, change)));
    }

    private static Outlet outlet(Outlet outlet, UnaryOperator<Outlet.OnRun> change) {
        return outlet.tap().orElse(null) instanceof Outlet.OnRun onRun
                ? outlet.tappedAt(Optional.of(change.apply(onRun)))
                : outlet;
    }

    private static Gang gang(Gang gang, UnaryOperator<Outlet.OnRun> change) {
        return gang.tap()
                .map(tap -> gang.tappedAt(Optional.of(change.apply(tap))))
                .orElse(gang);
    }

    private static Blower blower(Blower blower, UnaryOperator<Outlet.OnRun> change) {
        return blower.feeds()
                .map(feeds -> blower.feeding(Optional.of(change.apply(feeds))))
                .orElse(blower);
    }

    /** Where it is in the room. */
    static Optional<Point> place(Room room, Outlet.OnRun seat) {
        return Find.run(room, seat.run().text()).filter(Sound::isLine).map(run -> run.at(seat.atM()));
    }

    /** The nearest place on any run. */
    static Optional<Outlet.OnRun> nearest(Room room, Point point) {
        Optional<Outlet.OnRun> best = Optional.empty();
        double bestM = Double.POSITIVE_INFINITY;
        for (Run run : room.runs()) {
            if (Sound.isLine(run) && run.nearest(point).distanceM() < bestM) {
                bestM = run.nearest(point).distanceM();
                best = Optional.of(on(run, point));
            }
        }
        return best;
    }

    /** The nearest place on this run. */
    static Outlet.OnRun on(Run run, Point point) {
        return new Outlet.OnRun(run.id(), Metres.clean(run.nearest(point).alongM()));
    }

    /** Where an outlet leaves the pipe: its tap on a run, or the nearest point of the pipe; empty on a gang, and without pipe. */
    static Optional<Outlet.OnRun> of(Room room, Seat seat) {
        Outlet.Tap tap = seat.outlet().tap().orElse(null);
        if (tap instanceof Outlet.OnGang) {
            return Optional.empty();
        }
        return tap instanceof Outlet.OnRun onRun ? Optional.of(onRun) : nearest(room, seat.rim());
    }
}
