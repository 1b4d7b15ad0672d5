package lungfish.drawing;

import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;

/**
 * Steps of the grid and of the rulers, in the reader's units.
 *
 * @param stepM from line to line
 */
record GridSteps(double stepM, Look look) {
    private static final double FOOT_M = 0.3048; // exact, NIST SP 811
    private static final double[] METRIC_M = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
    private static final double[] FEET = {0.25, 0.5, 1, 2, 3, 5, 10, 20, 50, 100};

    /** The finest steps that keep their lines this far apart. */
    static GridSteps apart(double leastPx, Viewport view, Look look) {
        boolean isUs = look.quantities().units() == DisplayUnits.US;
        double unitM = isUs ? FOOT_M : 1;
        double[] steps = isUs ? FEET : METRIC_M;
        int at = 0;
        while (at < steps.length - 1 && view.lengthPx(steps[at] * unitM) < leastPx) {
            at++;
        }
        return new GridSteps(steps[at] * unitM, look);
    }

    int first(double fromM) {
        return (int) Math.ceil(fromM / stepM - 1e-9);
    }

    int last(double toM) {
        return (int) Math.floor(toM / stepM + 1e-9);
    }

    double at(int i) {
        return i * stepM;
    }

    String label(int i) {
        return i == 0 ? "0" : look.quantities().show(at(i), Dimension.LENGTH);
    }
}
