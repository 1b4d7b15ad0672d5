package lungfish.edit;

import static lungfish.edit.OwnValue.within;

import java.util.EnumMap;
import java.util.Map;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.room.Climate;
import lungfish.room.Room;
import lungfish.room.Spread;
import lungfish.room.Supply;
import lungfish.room.Wishes;

/** The numbers that a keeper may say of the room as a whole: its air, its mains, and what is wished for. */
public final class RoomValues {
    static final Limits AIR_K = Limits.from(200, 400);
    private static final Limits OXYGEN_KG_PER_M3 = Limits.above(0, 0.05);
    private static final double OLDEST_S = 1e10;

    private static final Holder<Climate> CLIMATE = new Holder<>(Room::climate, Room::withClimate);
    private static final Holder<Supply> SUPPLY = new Holder<>(Room::supply, Room::withSupply);
    private static final Holder<Wishes> WISHES = new Holder<>(Room::wishes, Room::withWishes);
    static final OwnValue TEMPERATURE = CLIMATE.value(
            "Room temperature", Dimension.TEMPERATURE, AIR_K, Climate::temperatureK, Climate::withTemperatureK);
    static final OwnValue HUMIDITY =
            CLIMATE.value("Relative humidity", Dimension.SHARE, Limits.SHARE, Climate::humidity, Climate::withHumidity);
    static final OwnValue ALTITUDE = CLIMATE.value(
            "Altitude above the sea",
            Dimension.ALTITUDE,
            Limits.from(-500, 9000),
            Climate::altitudeM,
            Climate::withAltitudeM);
    public static final OwnValue COLDEST_PIPE = CLIMATE.value(
            "Coldest place on the pipe",
            Dimension.TEMPERATURE,
            AIR_K,
            Climate::coldestPipeK,
            Climate::withColdestPipeK);
    static final OwnValue ABSORPTION = within(
            "Sound that its surfaces take up",
            Dimension.SHARE,
            Limits.SHARE,
            room -> room.shell().absorption(),
            (room, si) -> room.withShell(room.shell().absorbing(si)));
    static final OwnValue VOLTAGE = SUPPLY.value(
            "Mains voltage", Dimension.VOLTAGE, Limits.above(0, 1000), Supply::voltageV, Supply::withVoltageV);
    static final OwnValue FREQUENCY = SUPPLY.value(
            "Mains frequency", Dimension.FREQUENCY, Limits.above(0, 400), Supply::frequencyHz, Supply::withFrequencyHz);
    static final OwnValue ENERGY_PRICE = SUPPLY.value(
            "Price of a kWh", Dimension.ENERGY_PRICE, Limits.from(0, 1), Supply::pricePerJ, Supply::withPricePerJ);
    static final OwnValue GROWTH_RESERVE = WISHES.value(
            "Air in reserve for growth",
            Dimension.SHARE,
            Limits.from(0, 10),
            Wishes::growthReserve,
            Wishes::withGrowthReserve);
    static final OwnValue INDEX_SPARE = WISHES.value(
            "Spare pressure at the worst outlet",
            Dimension.PRESSURE,
            Limits.from(0, 1e5),
            Wishes::indexSparePa,
            Wishes::withIndexSparePa);
    static final OwnValue LOUDEST = WISHES.value(
            "Loudest that you will bear",
            Dimension.SOUND_LEVEL,
            Limits.from(0, 200),
            Wishes::loudestDba,
            Wishes::withLoudestDba);
    public static final OwnValue RUNTIME = WISHES.value(
            "Time on battery", Dimension.DURATION, Limits.above(0, OLDEST_S), Wishes::runtimeS, Wishes::withRuntimeS);
    static final OwnValue JAR =
            WISHES.value("Jar to measure with", Dimension.VOLUME, Limits.above(0, 1), Wishes::jarM3, Wishes::withJarM3);
    public static final OwnValue ALARM_OXYGEN = WISHES.value(
            "Oxygen at which you want to be there",
            Dimension.CONCENTRATION,
            OXYGEN_KG_PER_M3,
            Wishes::alarmKgPerM3,
            Wishes::withAlarmKgPerM3);
    public static final OwnValue DANGER_OXYGEN = WISHES.value(
            "Oxygen at which fish are lost",
            Dimension.CONCENTRATION,
            OXYGEN_KG_PER_M3,
            Wishes::dangerKgPerM3,
            Wishes::withDangerKgPerM3);
    /** What the plan assumes where they are not said. */
    private static final Map<Assumable, OwnValue> OF_PLAN = Map.ofEntries(
            Map.entry(Assumable.ROOM_TEMPERATURE, TEMPERATURE),
            Map.entry(Assumable.HUMIDITY, HUMIDITY),
            Map.entry(Assumable.ALTITUDE, ALTITUDE),
            Map.entry(Assumable.ABSORPTION, ABSORPTION),
            Map.entry(Assumable.GROWTH_RESERVE, GROWTH_RESERVE),
            Map.entry(Assumable.INDEX_SPARE, INDEX_SPARE),
            Map.entry(Assumable.LOUDEST, LOUDEST),
            Map.entry(Assumable.RUNTIME, RUNTIME),
            Map.entry(Assumable.JAR, JAR),
            Map.entry(Assumable.ENERGY_PRICE, ENERGY_PRICE),
            Map.entry(Assumable.VOLTAGE, VOLTAGE),
            Map.entry(Assumable.FREQUENCY, FREQUENCY),
            Map.entry(Assumable.ALARM_OXYGEN, ALARM_OXYGEN),
            Map.entry(Assumable.DANGER_OXYGEN, DANGER_OXYGEN));

    /** The same, those of the backup, and how far things may be off. */
    static final Map<Assumable, OwnValue> BY_KEY = withTheOthers();

    private RoomValues() {}

    private static Map<Assumable, OwnValue> withTheOthers() {
        Map<Assumable, OwnValue> all = new EnumMap<>(OF_PLAN);
        all.putAll(BackupValues.BY_KEY);
        all.put(Assumable.KERF, BuildingEdits.KERF);
        all.put(Assumable.SPARE_PARTS, BuildingEdits.SPARE);
        for (Spread spread : Spread.values()) {
            all.put(spread.usual(), SpreadValues.of(spread));
        }
        return all;
    }
}
