package lungfish.room;

import lungfish.reason.PartId;

/** Names a outlet of the room. */
public record OutletId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.OUTLET, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
