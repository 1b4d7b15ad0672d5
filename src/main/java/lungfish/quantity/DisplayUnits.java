package lungfish.quantity;

/** The units in which a room is shown. Inside, everything is SI. */
public enum DisplayUnits {
    METRIC,
    US
}
