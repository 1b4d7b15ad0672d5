package lungfish.room;

import java.util.Optional;

/**
 * A tap that several outlets share, through a gang valve or a string of tees.
 *
 * @param tap where its feeder leaves the pipe; absent: the nearest point of the main
 * @param feeder the tubing from the tap to the gang
 */
public record Gang(GangId id, Kind kind, Point place, Optional<Outlet.OnRun> tap, Optional<Outlet.Airline> feeder) {
    /** How it parts the air. */
    public enum Kind {
        GANG_VALVE,
        TEES
    }

    /** The same gang, elsewhere. */
    public Gang at(Point that) {
        return new Gang(id, kind, that, tap, feeder);
    }

    /** The same gang, its feeder leaving the pipe elsewhere; absent: at the nearest point. */
    public Gang tappedAt(Optional<Outlet.OnRun> that) {
        return new Gang(id, kind, place, that, feeder);
    }
}
