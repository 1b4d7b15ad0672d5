package lungfish.room;

import lungfish.reason.PartId;

/** Names a shelf of the room. */
public record ShelfId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.SHELF, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
