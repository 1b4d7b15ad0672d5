package lungfish.siphon;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Seat;
import lungfish.room.Tank;

/** Where water could come to: a lower tank, by the outlet of its own, or a machine. */
public sealed interface Reached permits Reached.ByOutlet, Reached.AtMachine {
    /**
     * A tank, down the airline of one of its outlets. A check valve there does not help: it opens the way that the water goes.
     *
     * @param depthM of the air release
     */
    record ByOutlet(Seat outlet, double depthM) implements Reached {
        @Override
        public double lineM() {
            return outlet.waterLineM();
        }

        @Override
        public double rimM() {
            return outlet.rim().zM();
        }

        @Override
        public PartId part() {
            return outlet.outlet().id().part();
        }

        @Override
        public Optional<Tank> tank() {
            return Optional.of(outlet.tank());
        }

        @Override
        public OptionalDouble freeM3() {
            return OptionalDouble.of(Vessel.freeM3(outlet.tank()));
        }
    }

    /** A blower or a pump, at its place. */
    record AtMachine(Blower machine, Point place) implements Reached {
        @Override
        public double lineM() {
            return place.zM();
        }

        @Override
        public double rimM() {
            return place.zM();
        }

        @Override
        public PartId part() {
            return machine.id().part();
        }

        @Override
        public Optional<Tank> tank() {
            return Optional.empty();
        }

        @Override
        public OptionalDouble freeM3() {
            return OptionalDouble.empty();
        }
    }

    /** The height to which water falls: the water line there, or the machine; m above the floor. */
    double lineM();

    /** The highest place at this end of the way, m above the floor: the rim that the airline passes, or the machine. */
    double rimM();

    PartId part();

    /** The tank; absent where it is a machine. */
    Optional<Tank> tank();

    /** What fits above the water line before the tank runs over, m³; absent where it is a machine. */
    OptionalDouble freeM3();
}
