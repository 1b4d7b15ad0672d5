package lungfish.network;

import java.util.Arrays;

/**
 * Runs of knots one after another, as a pipe with taps makes them: a knot with at most two neighbours is inner to a
 * run, all others are where runs end. A ring off a trunk is a run from the knot of its feed back to the same knot.
 *
 * <p>Few knots in a row are no chain: what a chain saves is not worth its bookkeeping there.
 */
final class Chains {
    private static final int LEAST = 4;
    private static final int NONE = -1;

    private final int[] first;
    private final int[] second;
    private final int[] degree;
    private final boolean[] inner;
    private final boolean[] taken;

    private int[] start = new int[8];
    private int[] endA = new int[8];
    private int[] endB = new int[8];
    private int chains;

    /** Vertices of all chains, chain by chain, each from its first end to its second. */
    private final int[] vertex;

    private int listed;

    /**
     * Finds them.
     *
     * @param count of vertices
     * @param low one end of each edge, no pair twice
     * @param high the other
     * @param barred vertices that are inner to none
     */
    Chains(int count, int[] low, int[] high, boolean[] barred) {
        first = filled(count);
        second = filled(count);
        degree = new int[count];
        vertex = new int[count];
        taken = new boolean[count];
        inner = new boolean[count];
        for (int e = 0; e < low.length; e++) {
            meet(low[e], high[e]);
            meet(high[e], low[e]);
        }
        for (int v = 0; v < count; v++) {
            inner[v] = degree[v] <= 2 && !barred[v];
        }
        for (int v = 0; v < count; v++) {
            if (inner[v] && !taken[v] && isLast(v)) {
                follow(v, outer(v));
            }
        }
        for (int v = 0; v < count; v++) {
            if (inner[v] && !taken[v]) {
                inner[v] = false;
                follow(first[v], v);
            }
        }
    }

    private static int[] filled(int count) {
        int[] array = new int[count];
        Arrays.fill(array, NONE);
        return array;
    }

    private void meet(int v, int neighbour) {
        if (degree[v] == 0) {
            first[v] = neighbour;
        } else if (degree[v] == 1) {
            second[v] = neighbour;
        }
        degree[v]++;
    }

    private boolean isLast(int v) {
        return degree[v] < 2 || !inner[first[v]] || !inner[second[v]];
    }

    /** The neighbour of the last of a run that is not inner; none at a loose end. */
    private int outer(int v) {
        if (first[v] != NONE && !inner[first[v]]) {
            return first[v];
        }
        return second[v] != NONE && !inner[second[v]] ? second[v] : NONE;
    }

    private void follow(int from, int a) {
        int begin = listed;
        int before = a;
        int v = from;
        while (v != NONE && inner[v]) {
            taken[v] = true;
            vertex[listed++] = v;
            int next = first[v] == before ? second[v] : first[v];
            before = v;
            v = next;
        }
        if (listed - begin < LEAST) {
            listed = begin;
        } else {
            keep(begin, a, v);
        }
    }

    private void keep(int begin, int a, int b) {
        if (chains + 1 >= start.length) {
            start = Arrays.copyOf(start, 2 * start.length);
            endA = Arrays.copyOf(endA, start.length);
            endB = Arrays.copyOf(endB, start.length);
        }
        start[chains] = begin;
        endA[chains] = a;
        endB[chains++] = b;
        start[chains] = listed;
    }

    /** How many there are. */
    int count() {
        return chains;
    }

    /** How many vertices lie in chains. */
    int size() {
        return listed;
    }

    /** Place of the first vertex of a chain among all; that of the next chain is its end. */
    int start(int chain) {
        return start[chain];
    }

    /** The vertex at a place. */
    int vertex(int place) {
        return vertex[place];
    }

    /** The vertex before the first of a chain; −1 at a loose end. */
    int before(int chain) {
        return endA[chain];
    }

    /** The vertex behind the last of a chain; −1 at a loose end. */
    int behind(int chain) {
        return endB[chain];
    }
}
