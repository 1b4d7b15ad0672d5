package lungfish.reason;

/** What a room may leave unsaid, and the plan then assumes, visibly. */
public enum Assumable {
    ROOM_TEMPERATURE,
    HUMIDITY,
    ALTITUDE,
    ABSORPTION,
    WATER_ABOVE_BOTTOM,
    AIRLINE_SLACK,
    HOSE_LENGTH,
    GROWTH_RESERVE,
    INDEX_SPARE,
    LOUDEST,
    RUNTIME,
    JAR,
    ENERGY_PRICE,
    VOLTAGE,
    FREQUENCY,
    INVERTER_EFFICIENCY,
    INVERTER_IDLE,
    BATTERY_TEMPERATURE,
    BATTERY_WEAR,
    COST_YEARS,
    RACK_MASS_PER_SHELF,
    WALL_REDUCTION,
    LISTENER_DISTANCE,
    DOOR_REDUCTION,
    DOOR_HEIGHT,
    AIR_PATH_SHARE,
    PUMP_AGE,
    TAP_LOSS_FACTOR,
    GANG_LOSS_FACTOR,
    ALARM_OXYGEN,
    DANGER_OXYGEN,
    /** Until somebody notices that the air is off, where there is no alarm. */
    NOTICE,
    /** The same where there is one. */
    NOTICE_ALARM,
    /** From noticing until a generator, or a standby that is started by hand, gives air. */
    READY,
    MEND,
    GENERATOR_FUEL,
    /** Share of the rated energy of the batteries that the charger puts back in an hour. */
    CHARGE_RATE,
    PROTEIN,
    /** Dry food a day, as a share of the mass of the fish. */
    FOOD_SHARE,
    BLOWER_MTBF,
    /** In a year. */
    MAINS_FAILURES,
    MAINS_OUTAGE,
    /** What a cut of the saw takes; like the next, taken only where the pipe is built. */
    KERF,
    /** Small parts bought beyond those counted, as a share of them. */
    SPARE_PARTS,
    /** How far depths may be off; like those that follow, taken only where it is asked how sure a plan is. */
    DEPTH_SPREAD,
    RESISTANCE_SPREAD,
    FLOW_SPREAD,
    FOULING_SPREAD,
    CURVE_SPREAD,
    WEAR_SPREAD,
    BORE_SPREAD,
    ROUGHNESS_SPREAD,
    /** Taken from the class of the device. */
    OUTLET_TARGET,
    /** The first of the catalogue. */
    VALVE_KIND,
    /** Wide open. */
    VALVE_OPENING,
    /** The first of the catalogue. */
    AIRLINE_SIZE
}
