package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What keeps the air on when something fails. */
public record Backup(
        List<Battery> batteries,
        Optional<Inverter> inverter,
        Optional<Alarm> alarm,
        Optional<Shedding> shedding,
        Optional<Boolean> generator) {
    public static final Backup NONE =
            new Backup(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Backup {
        batteries = List.copyOf(batteries);
    }

    /** The same with these batteries for all of its own. */
    public Backup withBatteries(List<Battery> those) {
        return new Backup(those, inverter, alarm, shedding, generator);
    }

    /** The same with this inverter for its own; empty: none. */
    public Backup withInverter(Optional<Inverter> that) {
        return new Backup(batteries, that, alarm, shedding, generator);
    }

    /**
     * A battery, or several alike.
     *
     * @param kind a class of the catalogue
     * @param capacityC rated charge of one, in coulomb (an Ah is 3600 C)
     * @param wear share of the rated capacity still there, 0 to 1
     */
    public record Battery(
            BatteryId id,
            String kind,
            int count,
            double voltageV,
            double capacityC,
            OptionalDouble temperatureK,
            OptionalDouble wear,
            Optional<CircuitId> chargedFrom) {
        /** So many of the same battery. */
        public Battery times(int that) {
            return new Battery(id, kind, that, voltageV, capacityC, temperatureK, wear, chargedFrom);
        }

        /** The same battery, as warm as this; empty: unknown. */
        public Battery withTemperatureK(OptionalDouble that) {
            return new Battery(id, kind, count, voltageV, capacityC, that, wear, chargedFrom);
        }

        /** The same battery, worn to this share; empty: unknown. */
        public Battery withWear(OptionalDouble that) {
            return new Battery(id, kind, count, voltageV, capacityC, temperatureK, that, chargedFrom);
        }
    }

    /** What makes mains power from the battery. */
    public record Inverter(
            OptionalDouble efficiency,
            OptionalDouble idleW,
            OptionalDouble ratedW,
            OptionalDouble surgeW,
            Optional<Wave> wave) {
        /** An inverter of which nothing is known. */
        public static final Inverter UNKNOWN = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());

        /** The same inverter with this efficiency; empty: unknown. */
        public Inverter withEfficiency(OptionalDouble that) {
            return new Inverter(that, idleW, ratedW, surgeW, wave);
        }

        /** The same inverter with this draw of its own; empty: unknown. */
        public Inverter withIdleW(OptionalDouble that) {
            return new Inverter(efficiency, that, ratedW, surgeW, wave);
        }
        /** The shape of its voltage. */
        public enum Wave {
            SINE,
            STEPPED
        }
    }

    /** A switch that rings when the pressure in the main falls. */
    public record Alarm(OptionalDouble setPa) {}

    /** How the room is cut down to its essential outlets. */
    public record Shedding(String valve, String who) {}
}
