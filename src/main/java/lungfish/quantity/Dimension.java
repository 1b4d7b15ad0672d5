package lungfish.quantity;

/** What kind of thing a number measures, and so which units a person reads and types it in. The SI unit is named. */
public enum Dimension {
    /** Pa, gauge. */
    PRESSURE,
    /** m³/s of free air. */
    AIR_FLOW,
    /** m³/s of water. */
    WATER_FLOW,
    /** m: rooms, racks, pipe runs. */
    LENGTH,
    /** m: water depths and tank sizes. */
    DEPTH,
    /** m: bores and walls. */
    BORE,
    /** m above the sea. */
    ALTITUDE,
    /** K. */
    TEMPERATURE,
    /** K, a difference. */
    TEMPERATURE_RISE,
    /** W. */
    POWER,
    /** J. */
    ENERGY,
    /** s. */
    DURATION,
    /** dB(A). */
    SOUND_LEVEL,
    /** m³. */
    VOLUME,
    /** kg. */
    MASS,
    /** The user's currency. */
    MONEY,
    /** The user's currency for a joule, shown for a kWh. */
    ENERGY_PRICE,
    /** 1, shown as per cent. */
    SHARE,
    /** 1, a whole number. */
    COUNT,
    /** 1. */
    RATIO,
    /** m/s. */
    SPEED,
    /** Turns of the water in a second. */
    TURNOVER,
    /** kg/m³ of oxygen in water. */
    CONCENTRATION,
    /** V. */
    VOLTAGE,
    /** A. */
    CURRENT,
    /** C (A s), shown as Ah. */
    CHARGE,
    /** Hz. */
    FREQUENCY,
    /** Pa, the load of a rack on its floor. */
    FLOOR_LOAD
}
