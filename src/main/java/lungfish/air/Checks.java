package lungfish.air;

/** Refuses numbers that only a mistake of the program can bring here; what a keeper types is judged before. */
final class Checks {
    private Checks() {}

    static void positive(double value, String what) {
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + ": must be finite and above 0");
        }
    }

    static void notNegative(double value, String what) {
        if (!(value >= 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + ": must be finite and 0 or above");
        }
    }
}
