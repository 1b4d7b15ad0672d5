package lungfish.network;

import java.util.Arrays;

/**
 * The linear system of one kind of question: which knots are held at a pressure, which are unknown, and which entries
 * of the matrix each pipe adds to. Its arrays are filled anew in each step, chain by chain ({@link Chains}), and then
 * for the rest; a chain may also be kept as it was.
 *
 * <p>Pipes and drops have places here in the order of the chains they belong to, those of the rest at the end.
 */
final class Frame {
    /** Number of each knot among the unknowns, in elimination order; −1 where its pressure is held. */
    final int[] unknownOfKnot;

    /** Knot of each unknown. */
    final int[] knotOfUnknown;

    /** Knots at the two ends of each pipe. */
    final int[] knotA;

    final int[] knotB;

    /** The pipes of the network in the order in which they have their places here. */
    final Blocks pipes;

    /** Number of chains; also the number of the block that is the rest. */
    final int chains;

    private final Numbering numbering;
    private final ChainFactor chainFactor;
    private final Cholesky cholesky;

    /** Unknowns at the ends of each pipe; the number of unknowns where an end is held. */
    private final int[] endA;

    private final int[] endB;

    /** The unknown end of a pipe whose other end is held; the number of unknowns for all others. */
    private final int[] loneEnd;

    private final int[] linkOfPipe;
    private final double[] link;
    private final double[] ground;
    private final double[] restLink;
    private final double[] restGround;
    private final double[] restRight;

    /** Right side before elimination: what enters each unknown. One more at the end, for all that is held. */
    final double[] right;

    /** Change of ψ of each unknown as {@link #solve} found it; at the end a nothing, for all that is held. */
    final double[] change;

    Frame(Shape shape, Knots knots, boolean[] held) {
        int count = shape.pipes();
        int[] a = new int[count];
        int[] b = new int[count];
        Arrays.setAll(a, i -> knots.ofNode[shape.pipeFrom[i]]);
        Arrays.setAll(b, i -> knots.ofNode[shape.pipeTo[i]]);
        numbering = new Numbering(a, b, held, sources(shape, knots));
        unknownOfKnot = numbering.unknownOfKnot;
        int unknowns = numbering.count;
        chains = numbering.across.length;
        pipes = Blocks.ofPipes(numbering, a, b);
        knotA = pipes.inOrder(a);
        knotB = pipes.inOrder(b);
        linkOfPipe = pipes.inOrder(numbering.linkOfPipe);
        endA = unknownsOf(knotA);
        endB = unknownsOf(knotB);
        loneEnd = new int[count];
        Arrays.setAll(loneEnd, i -> endA[i] == unknowns ? endB[i] : endB[i] == unknowns ? endA[i] : unknowns);
        knotOfUnknown = new int[unknowns];
        for (int knot = 0; knot < unknownOfKnot.length; knot++) {
            if (unknownOfKnot[knot] >= 0) {
                knotOfUnknown[unknownOfKnot[knot]] = knot;
            }
        }
        int rest = unknowns - numbering.inner();
        chainFactor = new ChainFactor(numbering.chainStart);
        cholesky = new Cholesky(rest, numbering.restLow, numbering.restHigh);
        link = new double[numbering.links() + 1];
        ground = new double[unknowns + 1];
        right = new double[unknowns + 1];
        change = new double[unknowns + 1];
        restLink = new double[numbering.restLow.length + 1];
        restGround = new double[rest + 1];
        restRight = new double[rest + 1];
    }

    private static boolean[] sources(Shape shape, Knots knots) {
        boolean[] barred = new boolean[knots.count];
        for (int node : shape.sourceNode) {
            barred[knots.ofNode[node]] = true;
        }
        return barred;
    }

    /** Unknowns of knots; for those that are held the number of unknowns, where nothing changes. */
    int[] unknownsOf(int[] knot) {
        int[] unknowns = new int[knot.length];
        Arrays.setAll(unknowns, i -> unknownOfKnot[knot[i]] < 0 ? numbering.count : unknownOfKnot[knot[i]]);
        return unknowns;
    }

    /** Leaves at knots, in the order of the blocks that these belong to. */
    Blocks leaves(int[] knot) {
        return Blocks.ofLeaves(numbering, knot);
    }

    /** The block that a knot belongs to. */
    int blockOf(int knot) {
        return numbering.chainOfUnknown(unknownOfKnot[knot]);
    }

    /** Entries of the factor: the measure of fill. */
    int entries() {
        return cholesky.entries() + 2 * numbering.inner();
    }

    int unknowns() {
        return knotOfUnknown.length;
    }

    /** The first unknown of a block; that of the next block is its end. */
    int begin(int block) {
        return block > chains ? unknowns() : numbering.chainStart[block];
    }

    /** Empties the system for the next step. */
    void clear() {
        Arrays.fill(link, 0.0);
        Arrays.fill(ground, 0.0);
        Arrays.fill(right, 0.0);
    }

    /** Empties what belongs to the rest. */
    void clearRest() {
        Arrays.fill(link, numbering.inner() + chains, link.length, 0.0);
        Arrays.fill(ground, numbering.inner(), ground.length, 0.0);
        Arrays.fill(right, numbering.inner(), right.length, 0.0);
    }

    /** Empties what belongs to a chain. */
    void clear(int chain) {
        link[numbering.inner() + chain] = 0.0;
        for (int k = begin(chain); k < begin(chain + 1); k++) {
            link[k] = 0.0;
            ground[k] = 0.0;
            right[k] = 0.0;
        }
    }

    /** A pipe with conductance g, through which {@code flow} would go at the present pressures. */
    void addPipe(int pipe, double conductance, double flow) {
        link[linkOfPipe[pipe]] += conductance;
        ground[loneEnd[pipe]] += conductance;
        right[endA[pipe]] -= flow;
        right[endB[pipe]] += flow;
    }

    /** Adds the flow of a pipe of a kept chain to such an end of it as is not kept. */
    void addKept(int pipe, double flow) {
        right[endA[pipe]] -= endA[pipe] >= numbering.inner() ? flow : 0.0;
        right[endB[pipe]] += endB[pipe] >= numbering.inner() ? flow : 0.0;
    }

    /** What leaves a knot by a drop (or, negative, enters it from a blower), and how it grows with the pressure. */
    void addLeaf(int knot, double conductance, double outflow) {
        int unknown = unknownOfKnot[knot];
        if (unknown >= 0) {
            ground[unknown] += conductance;
            right[unknown] -= outflow;
        }
    }

    /** The same for a drop whose unknown is known. */
    void addDrop(int unknown, double conductance, double outflow) {
        ground[unknown] += conductance;
        right[unknown] -= outflow;
    }

    /** The largest balance of any unknown knot: what is not held must come to nothing. */
    double largest(double[] balance) {
        double largest = 0.0;
        for (int knot : knotOfUnknown) {
            largest = Math.max(largest, Math.abs(balance[knot]));
        }
        return largest;
    }

    /** Eliminates a chain that has been filled. */
    void eliminate(int chain) {
        chainFactor.eliminate(chain, link, ground, right);
    }

    /** Keeps a chain as it was last eliminated, balanced in itself. */
    void keep(int chain) {
        chainFactor.keep(chain);
    }

    /** Solves for the rest, all chains being eliminated. */
    void solveRest() {
        int inner = numbering.inner();
        int rest = unknowns() - inner;
        System.arraycopy(link, inner + chains, restLink, 0, numbering.restLow.length);
        System.arraycopy(ground, inner, restGround, 0, rest);
        System.arraycopy(right, inner, restRight, 0, rest);
        for (int c = 0; c < chains; c++) {
            int a = numbering.endA[c] - inner;
            int b = numbering.endB[c] - inner;
            restGround[a] += chainFactor.groundA[c];
            restRight[a] += chainFactor.rightA[c];
            restGround[b] += chainFactor.groundB[c];
            restRight[b] += chainFactor.rightB[c];
            restLink[numbering.across[c]] += chainFactor.across[c];
        }
        cholesky.factor(restLink, restGround);
        cholesky.solve(restRight);
        System.arraycopy(restRight, 0, change, inner, rest);
    }

    /** Solves for the inner knots of a chain, the rest being solved. */
    void back(int chain) {
        double a = change[numbering.endA[chain]];
        double b = change[numbering.endB[chain]];
        chainFactor.back(chain, a, b, link, ground, right, change);
    }

    /** How far the ends of a chain have moved in ψ. */
    double endsMoved(int chain) {
        return Math.max(Math.abs(change[numbering.endA[chain]]), Math.abs(change[numbering.endB[chain]]));
    }

    /** Finds the {@link #change} of ψ at each unknown. */
    void solve() {
        for (int chain = 0; chain < chains; chain++) {
            eliminate(chain);
        }
        solveRest();
        for (int chain = 0; chain < chains; chain++) {
            back(chain);
        }
    }

    /** Change of ψ of a knot after {@link #solve}. */
    double change(int knot) {
        int unknown = unknownOfKnot[knot];
        return unknown < 0 ? 0.0 : change[unknown];
    }

    /** Change of the fall of ψ along a pipe after {@link #solve}. */
    double changeAlong(int pipe) {
        return change[endA[pipe]] - change[endB[pipe]];
    }
}
