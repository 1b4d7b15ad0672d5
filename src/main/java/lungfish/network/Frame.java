package lungfish.network;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The linear system of one kind of question: which knots are held at a pressure, which are unknown, in which order
 * they are eliminated, and which link of the matrix each pipe adds to. Its arrays are filled anew in each step.
 */
final class Frame {
    /** Number of each knot among the unknowns, in elimination order; −1 where its pressure is held. */
    final int[] unknownOfKnot;

    /** Knot of each unknown. */
    final int[] knotOfUnknown;

    /** Knots at the two ends of each pipe. */
    final int[] knotA;

    final int[] knotB;

    /** Link of the matrix that a pipe adds to; −1 when an end is held or both ends are one knot. */
    private final int[] linkOfPipe;

    private final Cholesky cholesky;
    private final double[] link;
    private final double[] ground;

    /** Right side before {@link #solve}, change of ψ after it. */
    final double[] right;

    Frame(Shape shape, Knots knots, boolean[] held) {
        int pipes = shape.pipes();
        knotA = new int[pipes];
        knotB = new int[pipes];
        for (int i = 0; i < pipes; i++) {
            knotA[i] = knots.ofNode[shape.pipeFrom[i]];
            knotB[i] = knots.ofNode[shape.pipeTo[i]];
        }
        unknownOfKnot = new int[knots.count];
        int count = numberUnknowns(held);
        knotOfUnknown = new int[count];
        linkOfPipe = new int[pipes];
        int[][] ends = findLinks(count);
        reorder(count, ends);
        cholesky = eliminationOf(count, ends);
        link = new double[ends[0].length];
        ground = new double[count];
        right = new double[count];
    }

    private int numberUnknowns(boolean[] held) {
        int count = 0;
        for (int knot = 0; knot < held.length; knot++) {
            unknownOfKnot[knot] = held[knot] ? -1 : count++;
        }
        return count;
    }

    /** One link for each pair of unknowns that pipes join, however many pipes do. */
    private int[][] findLinks(int count) {
        Map<Long, Integer> known = new HashMap<>(2 * knotA.length);
        int[][] ends = new int[2][knotA.length];
        for (int i = 0; i < knotA.length; i++) {
            int a = unknownOfKnot[knotA[i]];
            int b = unknownOfKnot[knotB[i]];
            linkOfPipe[i] = -1;
            if (a >= 0 && b >= 0 && a != b) {
                int low = Math.min(a, b);
                int high = Math.max(a, b);
                int next = known.size();
                linkOfPipe[i] = known.computeIfAbsent((long) low * count + high, pair -> next);
                ends[0][linkOfPipe[i]] = low;
                ends[1][linkOfPipe[i]] = high;
            }
        }
        ends[0] = Arrays.copyOf(ends[0], known.size());
        ends[1] = Arrays.copyOf(ends[1], known.size());
        return ends;
    }

    private void reorder(int count, int[][] ends) {
        int[] order = MinimumDegree.order(count, ends[0], ends[1]);
        int[] turn = new int[count];
        for (int k = 0; k < count; k++) {
            turn[order[k]] = k;
        }
        for (int knot = 0; knot < unknownOfKnot.length; knot++) {
            if (unknownOfKnot[knot] >= 0) {
                unknownOfKnot[knot] = turn[unknownOfKnot[knot]];
                knotOfUnknown[unknownOfKnot[knot]] = knot;
            }
        }
        for (int e = 0; e < ends[0].length; e++) {
            ends[0][e] = turn[ends[0][e]];
            ends[1][e] = turn[ends[1][e]];
        }
    }

    private static Cholesky eliminationOf(int count, int[][] ends) {
        int[] low = new int[ends[0].length];
        int[] high = new int[low.length];
        for (int e = 0; e < low.length; e++) {
            low[e] = Math.min(ends[0][e], ends[1][e]);
            high[e] = Math.max(ends[0][e], ends[1][e]);
        }
        return new Cholesky(count, low, high);
    }

    /** Entries of the factor: the measure of fill. */
    int entries() {
        return cholesky.entries();
    }

    int unknowns() {
        return right.length;
    }

    /** Empties the system for the next step. */
    void clear() {
        Arrays.fill(link, 0.0);
        Arrays.fill(ground, 0.0);
        Arrays.fill(right, 0.0);
    }

    /** Whether a pipe lies within one knot, where nothing drives it. */
    boolean isIdle(int pipe) {
        return knotA[pipe] == knotB[pipe];
    }

    /** A pipe with conductance g, through which {@code flow} would go at the present pressures. */
    void addPipe(int pipe, double conductance, double flow) {
        int a = unknownOfKnot[knotA[pipe]];
        int b = unknownOfKnot[knotB[pipe]];
        if (linkOfPipe[pipe] >= 0) {
            link[linkOfPipe[pipe]] += conductance;
            right[a] -= flow;
            right[b] += flow;
        } else if (a >= 0) {
            ground[a] += conductance;
            right[a] -= flow;
        } else if (b >= 0) {
            ground[b] += conductance;
            right[b] += flow;
        }
    }

    /** What leaves a knot by a drop (or, negative, enters it from a blower), and how it grows with the pressure. */
    void addLeaf(int knot, double conductance, double outflow) {
        int unknown = unknownOfKnot[knot];
        if (unknown >= 0) {
            ground[unknown] += conductance;
            right[unknown] -= outflow;
        }
    }

    /** The largest balance of any unknown knot: what is not held must come to nothing. */
    double largest(double[] balance) {
        double largest = 0.0;
        for (int knot : knotOfUnknown) {
            largest = Math.max(largest, Math.abs(balance[knot]));
        }
        return largest;
    }

    /** Turns {@link #right} into the change of ψ at each unknown. */
    void solve() {
        cholesky.factor(link, ground);
        cholesky.solve(right);
    }

    /** Change of ψ of a knot after {@link #solve}. */
    double change(int knot) {
        int unknown = unknownOfKnot[knot];
        return unknown < 0 ? 0.0 : right[unknown];
    }
}
