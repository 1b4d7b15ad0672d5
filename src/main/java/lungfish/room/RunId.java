package lungfish.room;

import lungfish.reason.PartId;

/** Names a run of the room. */
public record RunId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.RUN, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
