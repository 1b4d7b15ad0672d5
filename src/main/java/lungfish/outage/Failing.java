package lungfish.outage;

import lungfish.reason.PartId;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/** What fails. */
public sealed interface Failing {
    /** The part of the room that it happens to; the room itself, where all of it is meant. */
    PartId part();

    /** The public supply: every machine, every stirrer. */
    record Mains() implements Failing {
        @Override
        public PartId part() {
            return PartId.ROOM;
        }
    }

    /** One protected circuit trips: what hangs on it stands still. */
    record CircuitTrips(CircuitId circuit) implements Failing {
        @Override
        public PartId part() {
            return circuit.part();
        }
    }

    /** One machine of a blower, or a small pump of today. */
    record BlowerStops(BlowerId blower) implements Failing {
        @Override
        public PartId part() {
            return blower.part();
        }
    }

    /** A run of pipe has to be shut off, with all that is fed only through it. */
    record BranchShut(RunId run) implements Failing {
        @Override
        public PartId part() {
            return run.part();
        }
    }

    /** The check valve of an outlet stays shut. */
    record CheckValveStuck(OutletId outlet) implements Failing {
        @Override
        public PartId part() {
            return outlet.part();
        }
    }

    /** The airline of an outlet slips off at its valve: air rushes out there, and the others go short. */
    record AirlineOff(OutletId outlet) implements Failing {
        @Override
        public PartId part() {
            return outlet.part();
        }
    }

    /** The hose between a blower and the pipe slips off. */
    record HoseOff(BlowerId blower) implements Failing {
        @Override
        public PartId part() {
            return blower.part();
        }
    }
}
