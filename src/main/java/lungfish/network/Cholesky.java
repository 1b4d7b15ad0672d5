package lungfish.network;

import java.util.Arrays;

/**
 * Solves {@code A x = b} for the matrix of a network: conductances between unknowns, and from each unknown to ground.
 *
 * <p><b>Analysis apart from arithmetic.</b> The pattern of the factor is worked out once from the elimination order
 * (T. A. Davis, Direct Methods for Sparse Linear Systems, SIAM 2006, §4) and kept while only numbers change; the
 * arithmetic is column by column, looking left, and allocates nothing. Unknowns are numbered in the order in which
 * they are eliminated, so that nothing is permuted on the way.
 *
 * <p><b>No subtraction.</b> A is symmetric with {@code −g} off the diagonal and {@code ground + Σ g} on it, all g and
 * ground ≥ 0. A textbook factor subtracts on the diagonal, and where a metre of wide pipe meets a needle valve (twelve
 * orders of magnitude apart) what is left of the ground is rounding. Here the ground is carried along in place of the
 * diagonal: to eliminate k with {@code d = ground_k + Σ g_ki} adds {@code g_ki g_kj / d} between its neighbours and
 * {@code g_ki ground_k / d} to their grounds, all sums of positive numbers, so that every pivot is right to the last
 * digits however wide the conductances spread (C. A. O'Cinneide, "Entrywise perturbation theory and error analysis for
 * Markov chains", Numer. Math. 65, 1993, p. 109, for the elimination of W. Grassmann, M. Taksar and D. Heyman, 1985).
 *
 * <p>A pivot of exactly zero is a group without ground (every drop closed, every blower shut): any pressure does there,
 * and its unknown stays where it is.
 */
final class Cholesky {
    private final int count;
    private final int[] columnStart;
    private final int[] row;
    private final int[] leftStart;
    private final int[] leftColumn;
    private final int[] placeOfLink;

    private final double[] factor;
    private final double[] pivotInverse;
    private final double[] groundLeft;
    private final double[] work;
    private final int[] next;

    /**
     * Analyses a pattern. Unknowns are numbered in elimination order.
     *
     * @param low lower-numbered end of each link
     * @param high higher-numbered end of each link
     */
    Cholesky(int count, int[] low, int[] high) {
        this.count = count;
        int[][] columns = CholeskyPattern.columns(count, low, high);
        columnStart = new int[count + 1];
        for (int k = 0; k < count; k++) {
            columnStart[k + 1] = columnStart[k] + columns[k].length;
        }
        row = new int[columnStart[count]];
        for (int k = 0; k < count; k++) {
            System.arraycopy(columns[k], 0, row, columnStart[k], columns[k].length);
        }
        leftStart = new int[count + 1];
        leftColumn = new int[row.length];
        transpose();
        placeOfLink = places(low, high);
        factor = new double[row.length];
        pivotInverse = new double[count];
        groundLeft = new double[count];
        work = new double[count];
        next = new int[count];
    }

    /** Entries of the factor below its diagonal: the measure of fill. */
    int entries() {
        return row.length;
    }

    private void transpose() {
        for (int r : row) {
            leftStart[r + 1]++;
        }
        for (int k = 0; k < count; k++) {
            leftStart[k + 1] += leftStart[k];
        }
        int[] fill = Arrays.copyOf(leftStart, count);
        for (int k = 0; k < count; k++) {
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                leftColumn[fill[row[p]]++] = k;
            }
        }
    }

    private int[] places(int[] low, int[] high) {
        int[] places = new int[low.length];
        for (int e = 0; e < low.length; e++) {
            places[e] = Arrays.binarySearch(row, columnStart[low[e]], columnStart[low[e] + 1], high[e]);
        }
        return places;
    }

    /**
     * Factors the matrix.
     *
     * @param link conductance of each link, 0 or more
     * @param ground conductance of each unknown to ground, 0 or more
     */
    void factor(double[] link, double[] ground) {
        Arrays.fill(factor, 0.0);
        for (int e = 0; e < placeOfLink.length; e++) {
            factor[placeOfLink[e]] += link[e];
        }
        System.arraycopy(ground, 0, groundLeft, 0, count);
        System.arraycopy(columnStart, 0, next, 0, count);
        for (int k = 0; k < count; k++) {
            pullFromLeft(k);
            finishColumn(k);
        }
    }

    private void pullFromLeft(int k) {
        double ground = groundLeft[k];
        for (int q = leftStart[k]; q < leftStart[k + 1]; q++) {
            int j = leftColumn[q];
            int here = next[j]++;
            double share = factor[here] * pivotInverse[j];
            ground += share * groundLeft[j];
            for (int p = here + 1; p < columnStart[j + 1]; p++) {
                work[row[p]] += share * factor[p];
            }
        }
        groundLeft[k] = ground;
    }

    private void finishColumn(int k) {
        double pivot = groundLeft[k];
        for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
            int r = row[p];
            factor[p] += work[r];
            work[r] = 0.0;
            pivot += factor[p];
        }
        pivotInverse[k] = pivot > 0.0 ? 1.0 / pivot : 0.0;
    }

    /** Solves in place with the last factor. */
    void solve(double[] b) {
        for (int k = 0; k < count; k++) {
            double share = b[k] * pivotInverse[k];
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                b[row[p]] += share * factor[p];
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            double sum = b[k];
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                sum += factor[p] * b[row[p]];
            }
            b[k] = sum * pivotInverse[k];
        }
    }
}
