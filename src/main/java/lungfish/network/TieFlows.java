package lungfish.network;

import java.util.Arrays;

/**
 * What goes through ties. A knot has one pressure, so no law says how the air divides among the ties inside it; the
 * balance of each node does where they form a tree, and where they form rings the air divides as it would among equal
 * short lengths of pipe (the least sum of squares). Fixed pressures at one knot share what it needs equally.
 */
final class TieFlows {
    private final Shape shape;
    private final int[] ties;
    private final int[] unknownOfNode;
    private final Cholesky cholesky;
    private final double[] link;
    private final double[] ground;
    private final int unknowns;

    TieFlows(Shape shape, Knots knots) {
        this.shape = shape;
        ties = inner(shape);
        unknownOfNode = new int[shape.nodes];
        Arrays.fill(unknownOfNode, -1);
        int[] anchor = new int[knots.count];
        Arrays.fill(anchor, -1);
        unknowns = numberUnknowns(knots, anchor);
        ground = new double[unknowns];
        int[][] ends = links();
        cholesky = new Cholesky(unknowns, ends[0], ends[1]);
        link = new double[ends[0].length];
        Arrays.fill(link, 1.0);
    }

    private static int[] inner(Shape shape) {
        int[] found = new int[shape.pipes()];
        int count = 0;
        for (int i = 0; i < found.length; i++) {
            if (shape.tie[i] && shape.pipeFrom[i] != shape.pipeTo[i]) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The first node of each knot is its anchor; the others are unknown, in an order that fills in little. */
    private int numberUnknowns(Knots knots, int[] anchor) {
        int count = 0;
        for (int node = 0; node < shape.nodes; node++) {
            int knot = knots.ofNode[node];
            if (anchor[knot] < 0) {
                anchor[knot] = node;
            } else {
                unknownOfNode[node] = count++;
            }
        }
        if (count > 0) {
            reorder(count);
        }
        return count;
    }

    private void reorder(int count) {
        long[] pairs = Arrays.stream(ties)
                .filter(tie -> unknown(shape.pipeFrom[tie]) >= 0 && unknown(shape.pipeTo[tie]) >= 0)
                .mapToLong(tie -> pair(unknown(shape.pipeFrom[tie]), unknown(shape.pipeTo[tie]), count))
                .distinct()
                .toArray();
        int[] low = Arrays.stream(pairs).mapToInt(pair -> (int) (pair / count)).toArray();
        int[] high = Arrays.stream(pairs).mapToInt(pair -> (int) (pair % count)).toArray();
        int[] order = MinimumDegree.order(count, low, high);
        int[] turn = new int[count];
        for (int k = 0; k < count; k++) {
            turn[order[k]] = k;
        }
        for (int node = 0; node < unknownOfNode.length; node++) {
            unknownOfNode[node] = unknownOfNode[node] < 0 ? -1 : turn[unknownOfNode[node]];
        }
    }

    private static long pair(int a, int b, int count) {
        return (long) Math.min(a, b) * count + Math.max(a, b);
    }

    private int unknown(int node) {
        return unknownOfNode[node];
    }

    private int[][] links() {
        int[][] ends = new int[2][ties.length];
        int count = 0;
        for (int tie : ties) {
            int a = unknown(shape.pipeFrom[tie]);
            int b = unknown(shape.pipeTo[tie]);
            if (a >= 0 && b >= 0) {
                ends[0][count] = Math.min(a, b);
                ends[1][count++] = Math.max(a, b);
            } else {
                ground[Math.max(a, b)] += 1.0;
            }
        }
        return new int[][] {Arrays.copyOf(ends[0], count), Arrays.copyOf(ends[1], count)};
    }

    /**
     * Fills in the flows of the ties.
     *
     * @param balance what enters each node but for ties, kg/s
     * @param pipeKgPerS flows of all pipes, those of the ties to be filled in
     */
    void fill(double[] balance, double[] pipeKgPerS) {
        if (ties.length == 0) {
            return;
        }
        double[] level = new double[unknowns];
        for (int node = 0; node < unknownOfNode.length; node++) {
            if (unknown(node) >= 0) {
                level[unknown(node)] = balance[node];
            }
        }
        cholesky.factor(link, ground);
        cholesky.solve(level);
        for (int tie : ties) {
            pipeKgPerS[tie] = levelOf(level, shape.pipeFrom[tie]) - levelOf(level, shape.pipeTo[tie]);
        }
    }

    private double levelOf(double[] level, int node) {
        return unknown(node) < 0 ? 0.0 : level[unknown(node)];
    }
}
