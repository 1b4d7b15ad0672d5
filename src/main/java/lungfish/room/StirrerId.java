package lungfish.room;

import lungfish.reason.PartId;

/** Names a stirrer of the room. */
public record StirrerId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.STIRRER, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
