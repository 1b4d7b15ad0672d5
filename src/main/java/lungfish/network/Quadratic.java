package lungfish.network;

/** The positive root that bounds a flow from above, and how exactly scalar laws are inverted. */
final class Quadratic {
    /** Cap on the steps of a scalar inversion: halving alone meets the last digit of a double within it. */
    static final int MOST_STEPS = 200;

    /** Relative step at which a scalar inversion has come to rounding. */
    static final double LAST_DIGITS = 4e-16;

    private Quadratic() {}

    /** The root x of {@code square x² + linear x = value}, all 0 or more; 0 when the value is 0. */
    static double positiveRoot(double square, double linear, double value) {
        if (value <= 0.0) {
            return 0.0;
        }
        if (value == Double.POSITIVE_INFINITY) {
            return value;
        }
        return 2.0 * value / (linear + Math.sqrt(linear * linear + 4.0 * square * value));
    }
}
