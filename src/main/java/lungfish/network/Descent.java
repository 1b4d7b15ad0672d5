package lungfish.network;

/**
 * The safeguard: walks down the convex function of the pressures alone.
 *
 * <p>With every law inverted, the flow of each element is a rising function of the fall of ψ across it, and what enters
 * a knot less what leaves it is minus the gradient of a convex function of all ψ. The direction is Newton's; how far to
 * go along it is decided by the slope of the function in that direction, which is minus that gradient times the
 * direction: negative before its least point, positive behind. A step is taken when the slope has fallen by half,
 * found by doubling or by regula falsi with halving. A convex function leaves no way to fail but slowness.
 */
final class Descent {
    private static final int STEPS = 40;
    private static final int TRIALS = 40;
    private static final int PATIENCE = 5;
    private static final double PROGRESS = 0.9;
    private static final double ENOUGH = 0.5;
    private static final double LONGEST = 1e6;

    private final Frame frame;
    private final PipeWork pipes;
    private final Leaves leaves;
    private final double[] psi;
    private final double[] base;
    private final double[] way;
    private final Misses misses = new Misses();

    /** What enters and leaves at the leaves, at pressures. */
    @FunctionalInterface
    interface Leaves {
        /** Puts them into the system, each at the flow that the pressures alone ask for. */
        void loadInverted(double[] psi, Misses misses);
    }

    Descent(Frame frame, PipeWork pipes, Leaves leaves, double[] psi) {
        this.frame = frame;
        this.pipes = pipes;
        this.leaves = leaves;
        this.psi = psi;
        base = new double[psi.length];
        way = new double[frame.unknowns()];
    }

    /** Walks down until nothing is left to balance but rounding, or for a number of steps; returns how many. */
    int run(int round) {
        mendBroken();
        int steps = 0;
        double best = Double.POSITIVE_INFINITY;
        int stuck = 0;
        while (steps < STEPS * round && stuck < PATIENCE) {
            steps++;
            load();
            System.arraycopy(frame.right, 0, way, 0, way.length);
            double out = norm(way);
            stuck = out < PROGRESS * best ? 0 : stuck + 1;
            best = Math.min(best, out);
            System.arraycopy(psi, 0, base, 0, psi.length);
            frame.solve();
            double slope = slopeAlong(way, frame.change);
            System.arraycopy(frame.change, 0, way, 0, way.length);
            if (!(slope < 0.0) || out == 0.0 || !search(slope)) {
                break;
            }
        }
        load();
        return steps;
    }

    private void mendBroken() {
        for (int knot = 0; knot < psi.length; knot++) {
            psi[knot] = Double.isFinite(psi[knot]) ? psi[knot] : 0.0;
        }
    }

    private static double norm(double[] vector) {
        double sum = 0.0;
        for (double each : vector) {
            sum += Math.abs(each);
        }
        return sum;
    }

    private double slopeAlong(double[] right, double[] direction) {
        double sum = 0.0;
        for (int k = 0; k < way.length; k++) {
            sum -= right[k] * direction[k];
        }
        return sum;
    }

    private void load() {
        frame.clear();
        misses.reset(1.0);
        pipes.loadInverted(psi, misses);
        leaves.loadInverted(psi, misses);
    }

    private double slopeAt(double t) {
        System.arraycopy(base, 0, psi, 0, psi.length);
        for (int k = 0; k < way.length; k++) {
            psi[frame.knotOfUnknown[k]] += t * way[k];
        }
        load();
        return slopeAlong(frame.right, way);
    }

    /** Leaves ψ at a point of the line where the slope is at most half of what it was; false when there is none. */
    private boolean search(double slope0) {
        double low = 0.0;
        double lowSlope = slope0;
        double high = Double.POSITIVE_INFINITY;
        double highSlope = 0.0;
        double t = 1.0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double slope = slopeAt(t);
            if (Math.abs(slope) <= ENOUGH * Math.abs(slope0)) {
                return true;
            }
            if (slope < 0.0) {
                low = t;
                lowSlope = slope;
            } else {
                high = t;
                highSlope = slope;
            }
            if (high == Double.POSITIVE_INFINITY && t > LONGEST) {
                return true;
            }
            t = next(low, lowSlope, high, highSlope, trial);
        }
        return low > 0.0;
    }

    private static double next(double low, double lowSlope, double high, double highSlope, int trial) {
        if (high == Double.POSITIVE_INFINITY) {
            return 2.0 * low;
        }
        boolean halve = trial % 2 == 1;
        double secant = low - lowSlope * (high - low) / (highSlope - lowSlope);
        return halve || !(secant > low && secant < high) ? 0.5 * (low + high) : secant;
    }
}
