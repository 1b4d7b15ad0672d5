package lungfish.network;

/** The slopes at the points of a {@link Curve}; Fritsch and Butland 1984, as quoted there. */
final class CurveSlopes {
    private CurveSlopes() {}

    static double[] of(double[] x, double[] y) {
        int last = x.length - 1;
        double[] width = new double[last];
        double[] secant = new double[last];
        for (int i = 0; i < last; i++) {
            width[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / width[i];
        }
        double[] slope = new double[last + 1];
        if (last == 1) {
            slope[0] = secant[0];
            slope[1] = secant[0];
            return slope;
        }
        for (int i = 1; i < last; i++) {
            slope[i] = inner(width[i - 1], width[i], secant[i - 1], secant[i]);
        }
        slope[0] = end(width[0], width[1], secant[0], secant[1]);
        slope[last] = end(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
        return slope;
    }

    /** Weighted harmonic mean; zero beside a flat piece, so that the cubic cannot overshoot. */
    private static double inner(double widthBefore, double widthAfter, double before, double after) {
        if (before * after <= 0.0) {
            return 0.0;
        }
        double weightBefore = 2.0 * widthAfter + widthBefore;
        double weightAfter = widthAfter + 2.0 * widthBefore;
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    /** Slope of the parabola through three points, kept from turning and from being steeper than three secants. */
    private static double end(double width, double next, double secant, double nextSecant) {
        double slope = ((2.0 * width + next) * secant - width * nextSecant) / (width + next);
        if (slope * secant <= 0.0) {
            return 0.0;
        }
        boolean turns = secant * nextSecant <= 0.0;
        return turns && Math.abs(slope) > 3.0 * Math.abs(secant) ? 3.0 * secant : slope;
    }
}
