package lungfish.room;

import lungfish.reason.PartId;

/** Names a rack of the room. */
public record RackId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.RACK, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
