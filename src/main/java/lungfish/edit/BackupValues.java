package lungfish.edit;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.room.Backup;
import lungfish.room.Backup.Alarm;
import lungfish.room.Backup.Generator;
import lungfish.room.Backup.Inverter;
import lungfish.room.Backup.Standby;
import lungfish.room.Room;

/** The numbers that a keeper may say of what keeps the air on when something fails. */
public final class BackupValues {
    private static final double LONGEST_S = 1e10;
    private static final double MOST_W = 1e6;
    private static final double MOST_PA = 1e6;

    private static final Holder<Backup> BACKUP = new Holder<>(Room::backup, Room::withBackup);
    private static final Holder<Inverter> INVERTER =
            new Holder<>(room -> room.backup().inverter().orElse(Inverter.UNKNOWN), BackupValues::withInverter);
    private static final Holder<Generator> GENERATOR = new Holder<>(
            room -> room.backup().generator().orElse(Generator.UNKNOWN),
            (room, said) -> room.withBackup(room.backup().withGenerator(Optional.of(said))));

    public static final OwnValue INVERTER_EFFICIENCY = INVERTER.value(
            "Efficiency of the inverter",
            Dimension.SHARE,
            Limits.above(0, 1),
            Inverter::efficiency,
            Inverter::withEfficiency);
    public static final OwnValue INVERTER_IDLE = INVERTER.value(
            "Idle draw of the inverter", Dimension.POWER, Limits.from(0, MOST_W), Inverter::idleW, Inverter::withIdleW);
    public static final OwnValue INVERTER_RATED = INVERTER.value(
            "Power of the inverter", Dimension.POWER, Limits.from(0, MOST_W), Inverter::ratedW, Inverter::withRatedW);
    public static final OwnValue INVERTER_SURGE = INVERTER.value(
            "Power of the inverter for a moment",
            Dimension.POWER,
            Limits.from(0, MOST_W),
            Inverter::surgeW,
            Inverter::withSurgeW);
    public static final OwnValue ALARM_SET = BACKUP.value(
            "Pressure at which the alarm rings",
            Dimension.PRESSURE,
            Limits.above(0, MOST_PA),
            backup -> backup.alarm().map(Alarm::setPa).orElse(OptionalDouble.empty()),
            (backup, pa) -> backup.withAlarm(
                    Optional.of(backup.alarm().orElse(new Alarm(pa)).withSetPa(pa))));
    public static final OwnValue NOTICE = BACKUP.value(
            "Time until somebody notices",
            Dimension.DURATION,
            Limits.from(0, LONGEST_S),
            Backup::noticeS,
            Backup::withNoticeS);
    public static final OwnValue MEND = BACKUP.value(
            "Time until a failed blower is replaced",
            Dimension.DURATION,
            Limits.above(0, LONGEST_S),
            Backup::mendS,
            Backup::withMendS);
    public static final OwnValue CHARGER = BACKUP.value(
            "Power of the charger", Dimension.POWER, Limits.above(0, MOST_W), Backup::chargerW, Backup::withChargerW);
    public static final OwnValue GENERATOR_RATED = ofGenerator(GENERATOR.value(
            "Power of the generator",
            Dimension.POWER,
            Limits.above(0, MOST_W),
            Generator::ratedW,
            Generator::withRatedW));
    public static final OwnValue FUEL = ofGenerator(GENERATOR.value(
            "Time that the fuel lasts",
            Dimension.DURATION,
            Limits.above(0, LONGEST_S),
            Generator::fuelS,
            Generator::withFuelS));
    public static final OwnValue STANDBY_READY = BACKUP.value(
            "Time until the standby gives air",
            Dimension.DURATION,
            Limits.from(0, LONGEST_S),
            backup -> backup.standby().map(Standby::readyS).orElse(OptionalDouble.empty()),
            (backup, si) -> backup.withStandby(
                    Optional.of(backup.standby().orElse(Standby.BY_HAND).withReadyS(si))));
    public static final OwnValue GENERATOR_READY = ofGenerator(GENERATOR.value(
            "Time until the generator gives power",
            Dimension.DURATION,
            Limits.from(0, LONGEST_S),
            Generator::readyS,
            Generator::withReadyS));

    /** What is assumed where they are not said. */
    static final Map<Assumable, OwnValue> BY_KEY = Map.ofEntries(
            Map.entry(Assumable.INVERTER_EFFICIENCY, INVERTER_EFFICIENCY),
            Map.entry(Assumable.INVERTER_IDLE, INVERTER_IDLE),
            Map.entry(Assumable.NOTICE, NOTICE),
            Map.entry(Assumable.NOTICE_ALARM, NOTICE),
            Map.entry(Assumable.MEND, MEND),
            Map.entry(Assumable.CHARGE_RATE, CHARGER),
            Map.entry(Assumable.GENERATOR_FUEL, FUEL));

    private BackupValues() {}

    /** An inverter of which nothing is said any more is none. */
    private static Room withInverter(Room room, Inverter said) {
        Optional<Inverter> inverter = Optional.of(said).filter(each -> !each.equals(Inverter.UNKNOWN));
        return room.withBackup(room.backup().withInverter(inverter));
    }

    /** Of a generator that is not there nothing can be said: that would make one. */
    private static OwnValue ofGenerator(OwnValue value) {
        return new OwnValue(
                value.label(),
                value.dimension(),
                value.now(),
                (room, si) -> room.backup().generator().isPresent()
                        ? value.say(room, si)
                        : Refused.because("There is no generator.", "Add it to the backup of the room first."));
    }
}
