package lungfish.outage;

import lungfish.reason.PartId;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/** What fails. */
public sealed interface Failing {
    /** The kinds of failure. */
    enum Kind {
        MAINS,
        CIRCUIT_TRIPS,
        BLOWER_STOPS,
        BRANCH_SHUT,
        CHECK_VALVE_STUCK,
        AIRLINE_OFF,
        HOSE_OFF
    }

    Kind kind();

    /** The part of the room that it happens to; the room itself, where all of it is meant. */
    PartId part();

    /** The public supply: every machine, every stirrer. */
    record Mains() implements Failing {
        @Override
        public Kind kind() {
            return Kind.MAINS;
        }

        @Override
        public PartId part() {
            return PartId.ROOM;
        }
    }

    /** One protected circuit trips: what hangs on it stands still. */
    record CircuitTrips(CircuitId circuit) implements Failing {
        @Override
        public Kind kind() {
            return Kind.CIRCUIT_TRIPS;
        }

        @Override
        public PartId part() {
            return circuit.part();
        }
    }

    /** One machine of a blower, or a small pump of today. */
    record BlowerStops(BlowerId blower) implements Failing {
        @Override
        public Kind kind() {
            return Kind.BLOWER_STOPS;
        }

        @Override
        public PartId part() {
            return blower.part();
        }
    }

    /** A run of pipe has to be shut off, with all that is fed only through it. */
    record BranchShut(RunId run) implements Failing {
        @Override
        public Kind kind() {
            return Kind.BRANCH_SHUT;
        }

        @Override
        public PartId part() {
            return run.part();
        }
    }

    /** The check valve of an outlet stays shut. */
    record CheckValveStuck(OutletId outlet) implements Failing {
        @Override
        public Kind kind() {
            return Kind.CHECK_VALVE_STUCK;
        }

        @Override
        public PartId part() {
            return outlet.part();
        }
    }

    /** The airline of an outlet slips off at its valve: air rushes out there, and the others go short. */
    record AirlineOff(OutletId outlet) implements Failing {
        @Override
        public Kind kind() {
            return Kind.AIRLINE_OFF;
        }

        @Override
        public PartId part() {
            return outlet.part();
        }
    }

    /** The hose between a blower and the pipe slips off. */
    record HoseOff(BlowerId blower) implements Failing {
        @Override
        public Kind kind() {
            return Kind.HOSE_OFF;
        }

        @Override
        public PartId part() {
            return blower.part();
        }
    }
}
