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
            Optional<CircuitId> chargedFrom) {}

    /** What makes mains power from the battery. */
    public record Inverter(
            OptionalDouble efficiency,
            OptionalDouble idleW,
            OptionalDouble ratedW,
            OptionalDouble surgeW,
            Optional<Wave> wave) {
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
