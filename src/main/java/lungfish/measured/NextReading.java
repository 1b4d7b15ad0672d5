package lungfish.measured;

import java.util.List;
import lungfish.room.Outlet;
import lungfish.room.OutletId;

/** A reading that would tell most next. */
public sealed interface NextReading {
    /** The information that is to be expected of it, in bits. */
    double bits();

    /** A jar at an outlet. */
    record Jar(OutletId outlet, double bits) implements NextReading {}

    /** A gauge at the blowers. */
    record Gauge(double bits) implements NextReading {}

    /**
     * The fall of the gauge with the blowers off and all outlets shut.
     *
     * @param shut valves of the pipe that stand shut meanwhile; none: the whole pipe is watched
     */
    record Fall(List<Outlet.OnRun> shut, double bits) implements NextReading {
        public Fall {
            shut = List.copyOf(shut);
        }
    }
}
