package lungfish.room;

import lungfish.reason.PartId;

/** Names a tank of the room. */
public record TankId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.TANK, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
