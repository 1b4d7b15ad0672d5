package lungfish.network;

import java.util.Arrays;

/**
 * An order of elimination that fills in little: always the vertex with the fewest neighbours left goes next, and its
 * neighbours become neighbours of one another (W. F. Tinney and J. W. Walker, Proc. IEEE 55(11), 1967, p. 1801,
 * scheme 2).
 *
 * <p>On trees, rings and rings of rings no vertex has more than two or three neighbours when its turn comes, so that
 * order, fill and time grow in proportion to the size; the elaborate relatives of this rule (approximate degrees,
 * absorbed elements) pay off on meshes of surfaces and solids, which no air main is. What must be minded is the hub: a
 * node with ten thousand branches. Its list is never walked when a branch goes; dead entries stay in it until it is
 * itself walked, and a new pair of neighbours is looked for in the shorter of the two lists.
 */
final class MinimumDegree {
    private final int[][] neighbours;
    private final int[] listed;
    private final int[] degree;
    private final boolean[] gone;
    private final int[] mark;
    private int markNow;
    private final int[] bucketHead;
    private final int[] after;
    private final int[] before;
    private int[] front = new int[8];

    private MinimumDegree(int count, int[] endA, int[] endB) {
        neighbours = new int[count][];
        listed = new int[count];
        degree = new int[count];
        gone = new boolean[count];
        mark = new int[count];
        bucketHead = new int[count + 1];
        after = new int[count];
        before = new int[count];
        list(count, endA, endB);
        Arrays.fill(bucketHead, -1);
        for (int v = count - 1; v >= 0; v--) {
            intoBucket(v);
        }
    }

    /**
     * Orders a graph without loops or doubled edges.
     *
     * @return the vertices, first to be eliminated first
     */
    static int[] order(int count, int[] endA, int[] endB) {
        return new MinimumDegree(count, endA, endB).run(count);
    }

    private void list(int count, int[] endA, int[] endB) {
        for (int e = 0; e < endA.length; e++) {
            degree[endA[e]]++;
            degree[endB[e]]++;
        }
        for (int v = 0; v < count; v++) {
            neighbours[v] = new int[degree[v] + 2];
        }
        for (int e = 0; e < endA.length; e++) {
            neighbours[endA[e]][listed[endA[e]]++] = endB[e];
            neighbours[endB[e]][listed[endB[e]]++] = endA[e];
        }
    }

    private int[] run(int count) {
        int[] order = new int[count];
        int least = 0;
        for (int k = 0; k < count; k++) {
            while (bucketHead[least] < 0) {
                least++;
            }
            int v = bucketHead[least];
            order[k] = v;
            eliminate(v);
            least = Math.max(0, least - 1);
        }
        return order;
    }

    private void eliminate(int v) {
        outOfBucket(v);
        gone[v] = true;
        int width = gatherFront(v);
        for (int i = 0; i < width; i++) {
            outOfBucket(front[i]);
            degree[front[i]]--;
        }
        shortestFirst(width);
        for (int i = 0; i < width - 1; i++) {
            joinToLater(i, width);
        }
        for (int i = 0; i < width; i++) {
            intoBucket(front[i]);
        }
        neighbours[v] = NONE;
    }

    private static final int[] NONE = {};

    private int gatherFront(int v) {
        int width = 0;
        front = front.length < listed[v] ? new int[listed[v] * 2] : front;
        for (int i = 0; i < listed[v]; i++) {
            int u = neighbours[v][i];
            if (!gone[u]) {
                front[width++] = u;
            }
        }
        return width;
    }

    /** By length of list, so that the longest is never walked. Fronts are short: insertion. */
    private void shortestFirst(int width) {
        for (int i = 1; i < width; i++) {
            int u = front[i];
            int j = i - 1;
            while (j >= 0 && listed[front[j]] > listed[u]) {
                front[j + 1] = front[j];
                j--;
            }
            front[j + 1] = u;
        }
    }

    private void joinToLater(int i, int width) {
        int u = front[i];
        dropDead(u);
        markNow++;
        for (int k = 0; k < listed[u]; k++) {
            mark[neighbours[u][k]] = markNow;
        }
        for (int j = i + 1; j < width; j++) {
            int w = front[j];
            if (mark[w] != markNow) {
                add(u, w);
                add(w, u);
            }
        }
    }

    private void dropDead(int u) {
        int kept = 0;
        for (int k = 0; k < listed[u]; k++) {
            int w = neighbours[u][k];
            if (!gone[w]) {
                neighbours[u][kept++] = w;
            }
        }
        listed[u] = kept;
    }

    private void add(int u, int w) {
        if (listed[u] == neighbours[u].length) {
            neighbours[u] = Arrays.copyOf(neighbours[u], listed[u] * 2 + 2);
        }
        neighbours[u][listed[u]++] = w;
        degree[u]++;
    }

    private void intoBucket(int v) {
        int head = bucketHead[degree[v]];
        after[v] = head;
        before[v] = -1;
        if (head >= 0) {
            before[head] = v;
        }
        bucketHead[degree[v]] = v;
    }

    private void outOfBucket(int v) {
        if (before[v] >= 0) {
            after[before[v]] = after[v];
        } else {
            bucketHead[degree[v]] = after[v];
        }
        if (after[v] >= 0) {
            before[after[v]] = before[v];
        }
    }
}
