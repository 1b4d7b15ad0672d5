package lungfish.rescue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.edit.RescueEdits;
import lungfish.room.Backup;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/** Something that may keep tanks alive when the air stops. */
public sealed interface Means {
    /** What it costs, in units of money, typical of its class; fuel is not counted. */
    double price();

    /** The room with it. */
    Room in(Room room);

    /** The hazards in which it does anything at all. */
    Set<Hazard> against();

    /** How many things have to be bought or put up. */
    int things();

    /** A switch on the pressure of the main that rings: somebody is there sooner. */
    record Alarm(BackupClass kind, OptionalDouble setPa) implements Means {
        @Override
        public double price() {
            return kind.price();
        }

        @Override
        public Room in(Room room) {
            return room.withBackup(room.backup().withAlarm(Optional.of(new Backup.Alarm(setPa))));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.allOf(Hazard.class);
        }

        @Override
        public int things() {
            return 1;
        }
    }

    /**
     * Batteries behind an inverter that bears the blowers and their start.
     *
     * @param count how many more; 0 where only the inverter is wanting
     * @param chargeC rated charge of one, coulomb
     * @param voltageV nominal voltage of one
     * @param inverter to buy; absent where that of the room does
     */
    record Battery(BatteryClass kind, int count, double chargeC, double voltageV, Optional<BackupClass> inverter)
            implements Means {
        @Override
        public double price() {
            return count * chargeC * voltageV * kind.pricePerJ()
                    + inverter.map(BackupClass::price).orElse(0.0);
        }

        @Override
        public Room in(Room room) {
            Room with = RescueEdits.moreBatteries(room, kind, chargeC, count);
            return inverter.map(
                            bought -> with.withBackup(with.backup().withInverter(Optional.of(inverter(with, bought)))))
                    .orElse(with);
        }

        /** Its efficiency and idle draw are those that the room says of its own, if it says any. */
        private static Backup.Inverter inverter(Room room, BackupClass bought) {
            Backup.Inverter now = room.backup().inverter().orElse(Backup.Inverter.UNKNOWN);
            return new Backup.Inverter(
                    now.efficiency(),
                    now.idleW(),
                    OptionalDouble.of(bought.ratedW()),
                    OptionalDouble.of(bought.surgeW()),
                    Optional.of(Backup.Inverter.Wave.SINE));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.of(Hazard.MAINS);
        }

        @Override
        public int things() {
            return count + (inverter.isPresent() ? 1 : 0);
        }
    }

    /**
     * Valves by which whoever notices cuts the room down to its essential outlets while it runs on batteries.
     *
     * @param valves how many
     */
    record Shedding(BackupClass kind, int valves) implements Means {
        private static final String WHO = "Whoever notices first";

        @Override
        public double price() {
            return valves * kind.price();
        }

        @Override
        public Room in(Room room) {
            return room.withBackup(room.backup().withShedding(Optional.of(new Backup.Shedding(kind.name(), WHO))));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.of(Hazard.MAINS);
        }

        @Override
        public int things() {
            return valves;
        }
    }

    /**
     * Small pumps with batteries of their own, on the essential outlets.
     *
     * @param count how many more
     */
    record BatteryPumps(BackupClass kind, int count) implements Means {
        @Override
        public double price() {
            return count * kind.price();
        }

        @Override
        public Room in(Room room) {
            int there =
                    room.backup().batteryPumps().map(Backup.BatteryPumps::count).orElse(0);
            return room.withBackup(
                    room.backup().withBatteryPumps(Optional.of(new Backup.BatteryPumps(kind.id(), there + count))));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.allOf(Hazard.class);
        }

        @Override
        public int things() {
            return count;
        }
    }

    /**
     * A generator that somebody starts.
     *
     * @param fuelS how long the fuel lasts that is kept for it, s
     * @param buy whether it is bought; if not, only fuel is laid in for that of the room
     */
    record Generator(Optional<BackupClass> buy, double fuelS) implements Means {
        @Override
        public double price() {
            return buy.map(BackupClass::price).orElse(0.0);
        }

        @Override
        public Room in(Room room) {
            Backup.Generator now = room.backup().generator().orElse(Backup.Generator.UNKNOWN);
            Backup.Generator with = buy.map(kind -> now.withRatedW(OptionalDouble.of(kind.ratedW())))
                    .orElse(now)
                    .withFuelS(OptionalDouble.of(fuelS));
            return room.withBackup(room.backup().withGenerator(Optional.of(with)));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.of(Hazard.MAINS);
        }

        @Override
        public int things() {
            return 1;
        }
    }

    /** Nothing is shed: valves that the room has for it stay open. */
    record AllOn() implements Means {
        @Override
        public double price() {
            return 0;
        }

        @Override
        public Room in(Room room) {
            return room.withBackup(room.backup().withShedding(Optional.empty()));
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.of(Hazard.MAINS);
        }

        @Override
        public int things() {
            return 1;
        }
    }

    /**
     * Blowers that stand by, each behind its check valve; beside small pumps a spare.
     *
     * @param kind of those to buy
     * @param beside which blower each of those to buy stands; none: the room has one
     * @param changeover what starts one by itself; absent: a hand
     * @param starting how many are fitted with it
     */
    record Standby(BlowerClass kind, List<BlowerId> beside, Optional<BackupClass> changeover, int starting)
            implements Means {
        public Standby {
            beside = List.copyOf(beside);
        }

        @Override
        public double price() {
            return beside.size() * kind.price()
                    + starting * changeover.map(BackupClass::price).orElse(0.0);
        }

        @Override
        public Room in(Room room) {
            Room with = room;
            for (BlowerId each : beside) {
                with = RescueEdits.oneStandby(with, kind, each);
            }
            return changeover.isPresent() ? RescueEdits.startingItself(with) : with;
        }

        @Override
        public Set<Hazard> against() {
            return EnumSet.of(Hazard.BLOWER);
        }

        @Override
        public int things() {
            return beside.size() + (changeover.isPresent() ? starting : 0);
        }
    }
}
