package lungfish.network;

/**
 * Eliminates the inner knots of each chain, so that only its two ends are left to solve for: a tridiagonal matrix with
 * one more column, that of the end it begins at (for a ring, where both ends are one, a cyclic one).
 *
 * <p>Knot after knot in place of a sparse factor: no lists of rows are walked, and what a knot takes from the one before
 * it stays in registers. As in {@link Cholesky}, what leads to ground is carried along, and nothing is subtracted.
 *
 * <p>Links are numbered so: that of inner knot k to the next is k, those from the first ends follow, chain by chain.
 */
final class ChainFactor {
    private final int[] start;
    private final double[] fromFirst;
    private final boolean[] still;

    /** What a chain leads from its first end to ground. */
    final double[] groundA;

    /** What a chain leads from its second end to ground. */
    final double[] groundB;

    /** What a chain leads from end to end. */
    final double[] across;

    /** Right side that a chain hands to its first end. */
    final double[] rightA;

    /** Right side that a chain hands to its second end. */
    final double[] rightB;

    ChainFactor(int[] start) {
        this.start = start;
        int size = start[start.length - 1];
        int count = start.length - 1;
        fromFirst = new double[size];
        still = new boolean[count];
        groundA = new double[count];
        groundB = new double[count];
        across = new double[count];
        rightA = new double[count];
        rightB = new double[count];
    }

    /**
     * Eliminates a chain.
     *
     * @param ground of each knot to ground; becomes the inverse of its pivot
     * @param right side of each knot; becomes what the knots before it have added to it
     */
    void eliminate(int chain, double[] link, double[] ground, double[] right) {
        double a = link[start[start.length - 1] + chain];
        double groundHere = 0.0;
        double rightHere = 0.0;
        double groundFirst = 0.0;
        double rightFirst = 0.0;
        double[] fromA = fromFirst;
        int end = start[chain + 1];
        for (int k = start[chain]; k < end; k++) {
            groundHere += ground[k];
            rightHere += right[k];
            double pivot = groundHere + a + link[k];
            double inverted = pivot > 0.0 ? 1.0 / pivot : 0.0;
            fromA[k] = a;
            ground[k] = inverted;
            right[k] = rightHere;
            double shareFirst = a * inverted;
            double shareNext = link[k] * inverted;
            groundFirst += shareFirst * groundHere;
            rightFirst += shareFirst * rightHere;
            groundHere *= shareNext;
            rightHere *= shareNext;
            a *= shareNext;
        }
        groundA[chain] = groundFirst;
        rightA[chain] = rightFirst;
        groundB[chain] = groundHere;
        rightB[chain] = rightHere;
        across[chain] = a;
        still[chain] = false;
    }

    /** Keeps the last elimination of a chain for a right side of nothing at all its inner knots. */
    void keep(int chain) {
        rightA[chain] = 0.0;
        rightB[chain] = 0.0;
        still[chain] = true;
    }

    /**
     * Solves for the inner knots of a chain, its ends being known.
     *
     * @param inverse of each pivot
     * @param carried what each knot was left with
     */
    void back(int chain, double xA, double xB, double[] link, double[] inverse, double[] carried, double[] x) {
        double own = still[chain] ? 0.0 : 1.0;
        double[] fromA = fromFirst;
        int begin = start[chain];
        double next = xB;
        for (int k = start[chain + 1] - 1; k >= begin; k--) {
            double here = (own * carried[k] + fromA[k] * xA) * inverse[k];
            next = here + link[k] * inverse[k] * next;
            x[k] = next;
        }
    }
}
