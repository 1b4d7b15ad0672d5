package lungfish.reason;

/** Names one part of a room or network, so that a finding can lead to it. */
public record PartId(Kind kind, String id) {
    /** The kinds of part. */
    public enum Kind {
        ROOM,
        RACK,
        SHELF,
        TANK,
        OUTLET,
        RUN,
        GANG,
        BLOWER,
        BATTERY,
        INVERTER,
        ALARM,
        STIRRER,
        CIRCUIT,
        OWN_CLASS,
        NETWORK
    }

    /** The room as a whole. */
    public static final PartId ROOM = new PartId(Kind.ROOM, "");
}
