package lungfish.room;

import lungfish.reason.PartId;

/** Names a gang of the room. */
public record GangId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.GANG, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
