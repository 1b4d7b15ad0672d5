package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What keeps the air on when something fails, and what a keeper does then.
 *
 * @param generator one that the room has; empty: none
 * @param batteryPumps small pumps with batteries of their own, on the essential outlets
 * @param standby how a blower that stands by comes on; empty: nothing is said, so by hand
 * @param noticeS from the air going off until somebody notices, s
 * @param mendS until a failed blower is replaced, s
 * @param chargerW what the charger puts into the batteries, W
 */
public record Backup(
        List<Battery> batteries,
        Optional<Inverter> inverter,
        Optional<Alarm> alarm,
        Optional<Shedding> shedding,
        Optional<Generator> generator,
        Optional<BatteryPumps> batteryPumps,
        Optional<Standby> standby,
        OptionalDouble noticeS,
        OptionalDouble mendS,
        OptionalDouble chargerW) {
    public static final Backup NONE =
            new Backup(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Backup {
        batteries = List.copyOf(batteries);
    }

    /** A backup of which nothing is said beyond batteries and what belongs to them. */
    public Backup(
            List<Battery> batteries,
            Optional<Inverter> inverter,
            Optional<Alarm> alarm,
            Optional<Shedding> shedding,
            Optional<Generator> generator) {
        this(
                batteries,
                inverter,
                alarm,
                shedding,
                generator,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The same with these batteries for all of its own. */
    public Backup withBatteries(List<Battery> those) {
        return new Backup(those, inverter, alarm, shedding, generator, batteryPumps, standby, noticeS, mendS, chargerW);
    }

    /** The same with this inverter for its own; empty: none. */
    public Backup withInverter(Optional<Inverter> that) {
        return new Backup(batteries, that, alarm, shedding, generator, batteryPumps, standby, noticeS, mendS, chargerW);
    }

    /** The same with this alarm for its own; empty: none. */
    public Backup withAlarm(Optional<Alarm> that) {
        return new Backup(
                batteries, inverter, that, shedding, generator, batteryPumps, standby, noticeS, mendS, chargerW);
    }

    /** The same, shed like this; empty: nothing is said of it. */
    public Backup withShedding(Optional<Shedding> that) {
        return new Backup(batteries, inverter, alarm, that, generator, batteryPumps, standby, noticeS, mendS, chargerW);
    }

    /** The same with this generator for its own; empty: none. */
    public Backup withGenerator(Optional<Generator> that) {
        return new Backup(batteries, inverter, alarm, shedding, that, batteryPumps, standby, noticeS, mendS, chargerW);
    }

    /** The same with these battery pumps; empty: none. */
    public Backup withBatteryPumps(Optional<BatteryPumps> those) {
        return new Backup(batteries, inverter, alarm, shedding, generator, those, standby, noticeS, mendS, chargerW);
    }

    /** The same, its standby coming on like this; empty: unknown. */
    public Backup withStandby(Optional<Standby> that) {
        return new Backup(
                batteries, inverter, alarm, shedding, generator, batteryPumps, that, noticeS, mendS, chargerW);
    }

    /** The same, noticed after so long; empty: unknown. */
    public Backup withNoticeS(OptionalDouble that) {
        return new Backup(
                batteries, inverter, alarm, shedding, generator, batteryPumps, standby, that, mendS, chargerW);
    }

    /** The same, mended after so long; empty: unknown. */
    public Backup withMendS(OptionalDouble that) {
        return new Backup(
                batteries, inverter, alarm, shedding, generator, batteryPumps, standby, noticeS, that, chargerW);
    }

    /** The same with a charger of this power; empty: unknown. */
    public Backup withChargerW(OptionalDouble that) {
        return new Backup(batteries, inverter, alarm, shedding, generator, batteryPumps, standby, noticeS, mendS, that);
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
        /** Another kind in its place. */
        public Battery as(String that) {
            return new Battery(id, that, count, voltageV, capacityC, temperatureK, wear, chargedFrom);
        }

        /** The same battery of this voltage, V. */
        public Battery withVoltageV(double that) {
            return new Battery(id, kind, count, that, capacityC, temperatureK, wear, chargedFrom);
        }

        /** The same battery of this rated charge, C. */
        public Battery withCapacityC(double that) {
            return new Battery(id, kind, count, voltageV, that, temperatureK, wear, chargedFrom);
        }

        /** The same battery, charged from this circuit; empty: unknown. */
        public Battery chargedFrom(Optional<CircuitId> that) {
            return new Battery(id, kind, count, voltageV, capacityC, temperatureK, wear, that);
        }

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

        /** The same inverter, giving this for ever, W; empty: unknown. */
        public Inverter withRatedW(OptionalDouble that) {
            return new Inverter(efficiency, idleW, that, surgeW, wave);
        }

        /** The same inverter, giving this for a moment, W; empty: unknown. */
        public Inverter withSurgeW(OptionalDouble that) {
            return new Inverter(efficiency, idleW, ratedW, that, wave);
        }

        /** The same inverter with this shape of voltage; empty: unknown. */
        public Inverter withWave(Optional<Wave> that) {
            return new Inverter(efficiency, idleW, ratedW, surgeW, that);
        }

        /** The shape of its voltage. */
        public enum Wave {
            SINE,
            STEPPED
        }
    }

    /**
     * A switch that rings when the pressure in the main falls.
     *
     * @param circuit that it draws its power from; absent: unknown, or a battery of its own
     */
    public record Alarm(OptionalDouble setPa, Optional<CircuitId> circuit) {
        /** An alarm of which nothing is said but where it is set: it may have a battery of its own. */
        public Alarm(OptionalDouble setPa) {
            this(setPa, Optional.empty());
        }

        /** The same alarm, ringing there, Pa gauge; empty: unknown. */
        public Alarm withSetPa(OptionalDouble that) {
            return new Alarm(that, circuit);
        }

        /** The same alarm on this circuit; empty: unknown, or a battery of its own. */
        public Alarm on(Optional<CircuitId> that) {
            return new Alarm(setPa, that);
        }
    }

    /** How the room is cut down to its essential outlets. */
    public record Shedding(String valve, String who) {}

    /**
     * A generator.
     *
     * @param ratedW what it gives for ever, W
     * @param fuelS how long its fuel lasts, s
     * @param readyS from noticing until it carries the room, s
     */
    public record Generator(OptionalDouble ratedW, OptionalDouble fuelS, OptionalDouble readyS) {
        /** A generator of which nothing is known. */
        public static final Generator UNKNOWN =
                new Generator(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        /** The same generator with this rating; empty: unknown. */
        public Generator withRatedW(OptionalDouble that) {
            return new Generator(that, fuelS, readyS);
        }

        /** The same generator with fuel for so long; empty: unknown. */
        public Generator withFuelS(OptionalDouble that) {
            return new Generator(ratedW, that, readyS);
        }

        /** The same generator, ready after so long; empty: unknown. */
        public Generator withReadyS(OptionalDouble that) {
            return new Generator(ratedW, fuelS, that);
        }
    }

    /**
     * Small pumps with batteries of their own, that start by themselves when the mains fail.
     *
     * @param kind a class of the catalogue
     */
    public record BatteryPumps(String kind, int count) {}

    /**
     * How a blower that stands by comes on.
     *
     * @param readyS from the failure, or from noticing where it is started by hand, until it gives air, s
     */
    public record Standby(Start start, OptionalDouble readyS) {
        /** As it is taken to come on where nothing is said. */
        public static final Standby BY_HAND = new Standby(Start.MANUAL, OptionalDouble.empty());

        /** The same, giving air after so long; empty: unknown. */
        public Standby withReadyS(OptionalDouble that) {
            return new Standby(start, that);
        }

        /** What starts it. */
        public enum Start {
            /** A switch on the pressure of the main, or on the mains. */
            AUTOMATIC,
            /** A person. */
            MANUAL
        }
    }
}
