package lungfish.catalogue;

import lungfish.quantity.Dimension;
import lungfish.reason.Assumption;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.reason.PartId;

/**
 * A value that the plan takes where the room is silent.
 *
 * @param what in plain words
 * @param source published source, or "common practice, no source"
 */
public record AssumedValue(Key key, String what, double si, Dimension dimension, String source) {
    /** The things that a room may leave out. */
    public enum Key {
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
        GANG_LOSS_FACTOR
    }

    /** The value as an answer lists it among what it assumed. */
    public Assumption about(PartId where) {
        return new Assumption(where, what, si, dimension, source);
    }

    /** The value with its origin: assumed. */
    public Given given() {
        return new Given(si, Origin.assumed(source));
    }
}
