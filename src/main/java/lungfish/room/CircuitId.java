package lungfish.room;

import lungfish.reason.PartId;

/** Names a circuit of the room. */
public record CircuitId(String text) {
    /** The same name, as findings carry it. */
    public PartId part() {
        return new PartId(PartId.Kind.CIRCUIT, text);
    }

    @Override
    public String toString() {
        return text;
    }
}
