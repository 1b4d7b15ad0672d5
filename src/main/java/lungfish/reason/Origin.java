package lungfish.reason;

import java.util.Optional;

/**
 * Where a number came from.
 *
 * @param detail the file place, class id, or reason, in plain words; may be empty
 * @param unsaid what the room does not say, where the number is assumed
 */
public record Origin(Kind kind, String detail, Optional<Assumable> unsaid) {
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
        return new Origin(Kind.TYPED, detail, Optional.empty());
    }

    public static Origin drawn(String detail) {
        return new Origin(Kind.DRAWN, detail, Optional.empty());
    }

    public static Origin catalogue(String detail) {
        return new Origin(Kind.CATALOGUE, detail, Optional.empty());
    }

    public static Origin assumed(Assumable unsaid, String detail) {
        return new Origin(Kind.ASSUMED, detail, Optional.of(unsaid));
    }

    public static Origin computed(String detail) {
        return new Origin(Kind.COMPUTED, detail, Optional.empty());
    }

    public static Origin constant(String detail) {
        return new Origin(Kind.CONSTANT, detail, Optional.empty());
    }
}
