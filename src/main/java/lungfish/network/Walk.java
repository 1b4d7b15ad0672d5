package lungfish.network;

/**
 * The walk to an answer: undamped Newton steps first; where they make no progress, the {@link Descent}, and steps again
 * from where it came to, the first of them shortened.
 */
final class Walk {
    private static final int STEPS = 30;

    /** Shortened steps that a later round begins with: where kinks make whole steps circle, shorter ones do not. */
    private static final int SHORT_STEPS = 12;

    private static final double SHORT = 0.5;

    /** Steps without progress after which the safeguard is called, and what counts as progress. */
    private static final int PATIENCE = 6;

    private static final double PROGRESS = 0.7;

    /** How often safeguard and steps take turns. */
    private static final int ROUNDS = 4;

    private final Elements elements;
    private final Descent descent;
    private int steps;

    /** What is walked: elements in a frame. */
    interface Elements {
        /** Puts every element into the frame as its tangent; returns how far the laws are missed. */
        double load();

        /** Whether what enters each knot leaves it. */
        boolean isBalanced();

        /** Solves the frame and takes that share of the step; some may wait for the next load with it. */
        void step(double share);
    }

    Walk(Elements elements, Descent descent) {
        this.elements = elements;
        this.descent = descent;
    }

    /** Begins to count; a start that took a linear solve of its own counts as one. */
    void begin(int startSteps) {
        steps = startSteps;
    }

    /** Linear solves since the beginning. */
    int steps() {
        return steps;
    }

    /** Walks; false at the cap. */
    boolean home() {
        for (int round = 0; round < ROUNDS; round++) {
            int shortened = 0;
            if (round > 0) {
                steps += descent.run(round);
                shortened = SHORT_STEPS;
            }
            if (steps(shortened)) {
                return true;
            }
        }
        return false;
    }

    private boolean steps(int shortened) {
        double last = Double.POSITIVE_INFINITY;
        double best = Double.POSITIVE_INFINITY;
        int bestAt = shortened;
        for (int i = 0; i < STEPS + shortened; i++) {
            double figure = elements.load();
            if (Misses.isMet(figure, last) && elements.isBalanced()) {
                return true;
            }
            if (figure < PROGRESS * best) {
                best = figure;
                bestAt = Math.max(i, shortened);
            }
            if (Double.isNaN(figure) || i - bestAt >= PATIENCE) {
                return false;
            }
            last = figure;
            elements.step(i < shortened ? SHORT : 1.0);
            steps++;
        }
        elements.load();
        return false;
    }
}
