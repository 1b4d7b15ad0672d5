package lungfish.reason;

/**
 * Where a number came from.
 *
 * @param detail the file place, class id, or reason, in plain words; may be empty
 */
public record Origin(Kind kind, String detail) {
    /** The kinds of origin. */
    public enum Kind {
        /** Typed by the keeper. */
        TYPED,
        /** Measured from the drawing. */
        DRAWN,
        /** From a catalogue class. */
        CATALOGUE,
        /** Assumed, because the room does not say. Shown as assumed, never written to the file. */
        ASSUMED,
        /** Computed by an engine. */
        COMPUTED,
        /** A constant of nature or a published one. */
        CONSTANT
    }

    public static Origin typed(String detail) {
        return new Origin(Kind.TYPED, detail);
    }

    public static Origin drawn(String detail) {
        return new Origin(Kind.DRAWN, detail);
    }

    public static Origin catalogue(String detail) {
        return new Origin(Kind.CATALOGUE, detail);
    }

    public static Origin assumed(String detail) {
        return new Origin(Kind.ASSUMED, detail);
    }

    public static Origin computed(String detail) {
        return new Origin(Kind.COMPUTED, detail);
    }

    public static Origin constant(String detail) {
        return new Origin(Kind.CONSTANT, detail);
    }
}
