package lungfish.room;

import lungfish.reason.PartId;

/** Names a blower of the room. */
public record BlowerId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.BLOWER, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
