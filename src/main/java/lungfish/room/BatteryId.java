package lungfish.room;

import lungfish.reason.PartId;

/** Names a battery of the room. */
public record BatteryId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.BATTERY, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
