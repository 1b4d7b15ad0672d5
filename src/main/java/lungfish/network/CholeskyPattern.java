package lungfish.network;

import java.util.Arrays;

/**
 * Where the factor of a sparse matrix has entries. A column's pattern is that of the matrix together with those of its
 * children in the elimination tree (T. A. Davis, Direct Methods for Sparse Linear Systems, SIAM 2006, §4.1).
 */
final class CholeskyPattern {
    private CholeskyPattern() {}

    /** Rows of each column below the diagonal, rising. */
    static int[][] columns(int count, int[] low, int[] high) {
        int[][] columns = byLowEnd(count, low, high);
        int[] firstChild = filled(count);
        int[] nextSibling = filled(count);
        int[] seen = filled(count);
        int[] rows = new int[count];
        for (int k = 0; k < count; k++) {
            int size = gather(columns[k], k, seen, rows, 0);
            for (int child = firstChild[k]; child >= 0; child = nextSibling[child]) {
                size = gather(columns[child], k, seen, rows, size);
            }
            columns[k] = Arrays.copyOf(rows, size);
            Arrays.sort(columns[k]);
            if (size > 0) {
                int parent = columns[k][0];
                nextSibling[k] = firstChild[parent];
                firstChild[parent] = k;
            }
        }
        return columns;
    }

    private static int[] filled(int count) {
        int[] array = new int[count];
        Arrays.fill(array, -1);
        return array;
    }

    private static int[][] byLowEnd(int count, int[] low, int[] high) {
        int[] size = new int[count];
        for (int l : low) {
            size[l]++;
        }
        int[][] columns = new int[count][];
        for (int k = 0; k < count; k++) {
            columns[k] = new int[size[k]];
        }
        for (int e = 0; e < low.length; e++) {
            columns[low[e]][--size[low[e]]] = high[e];
        }
        return columns;
    }

    private static int gather(int[] from, int k, int[] seen, int[] rows, int size) {
        int end = size;
        for (int r : from) {
            if (r > k && seen[r] != k) {
                seen[r] = k;
                rows[end++] = r;
            }
        }
        return end;
    }
}
