package lungfish.network;

/** The checks that every part of a network makes of its numbers; a reader of files has asked before. */
final class Part {
    private Part() {}

    static void above0(String what, double value) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be finite and above 0, not " + value);
        }
    }

    static void from0(String what, double value) {
        if (!(value >= 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be finite and 0 or more, not " + value);
        }
    }

    static void finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite, not " + value);
        }
    }
}
