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
