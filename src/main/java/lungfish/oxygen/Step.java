package lungfish.oxygen;

/**
 * A step of the integrator: levels in g/m³ at its ends, and how fast they change there.
 *
 * @param toS after {@code fromS}
 */
record Step(double fromS, double toS, double fromGPerM3, double toGPerM3, double fromGPerM3S, double toGPerM3S) {
    private static final int BISECTIONS = 60;

    /** The level inside the step: the cubic that fits levels and rates at both ends. */
    double atS(double seconds) {
        double span = toS - fromS;
        double x = (seconds - fromS) / span;
        double left = 1 - x;
        return left * left * (1 + 2 * x) * fromGPerM3
                + x * x * (3 - 2 * x) * toGPerM3
                + x * left * span * (left * fromGPerM3S - x * toGPerM3S);
    }

    /** Whether the level comes down to this within the step. Within a phase a level only rises or only falls. */
    boolean comesDownTo(double gPerM3) {
        return fromGPerM3 > gPerM3 && toGPerM3 <= gPerM3;
    }

    /** When it comes down to this level, which it does. */
    double whenDownToS(double gPerM3) {
        double above = fromS;
        double below = toS;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (above + below) / 2;
            if (atS(middle) > gPerM3) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return below;
    }
}
