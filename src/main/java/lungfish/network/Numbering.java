package lungfish.network;

import java.util.Arrays;

/**
 * Which knots are unknown, in which order they are eliminated, and which link of the matrix each pipe adds to.
 *
 * <p>Inner knots of {@link Chains} come first, chain by chain; then the rest, ordered by {@link MinimumDegree} on what
 * the chains leave. Links likewise: that of inner knot k to the next is k, then those from the first ends of the chains,
 * then the rest, then one that leads nowhere.
 */
final class Numbering {
    /** Number of each knot among the unknowns; −1 where its pressure is held. */
    final int[] unknownOfKnot;

    /** How many unknowns there are. */
    final int count;

    /** Where each chain begins among the unknowns; last, where the rest does. */
    final int[] chainStart;

    /** Unknown at the first end of each chain; the number of unknowns where there is none. */
    final int[] endA;

    /** Unknown at the second end of each chain; the number of unknowns where there is none. */
    final int[] endB;

    /** Which of the rest's links each chain adds to, joining its two ends; one too many where it joins nothing. */
    final int[] across;

    /** Link that each pipe adds to; the one that leads nowhere when an end is held or both ends are one knot. */
    final int[] linkOfPipe;

    /** Lower end of each of the rest's links, counted from the first of the rest. */
    final int[] restLow;

    /** Higher end of each of the rest's links. */
    final int[] restHigh;

    /**
     * Numbers them.
     *
     * @param knotA knot at the first end of each pipe
     * @param knotB knot at the second end of each pipe
     * @param held knots whose pressure is known
     * @param barred knots that are not inner to a chain
     */
    Numbering(int[] knotA, int[] knotB, boolean[] held, boolean[] barred) {
        unknownOfKnot = new int[held.length];
        int unknowns = 0;
        for (int knot = 0; knot < held.length; knot++) {
            unknownOfKnot[knot] = held[knot] ? -1 : unknowns++;
        }
        count = unknowns;
        Pairs pairs = pairs(knotA, knotB);
        boolean[] barredUnknown = new boolean[count];
        for (int knot = 0; knot < held.length; knot++) {
            if (barred[knot] && !held[knot]) {
                barredUnknown[unknownOfKnot[knot]] = true;
            }
        }
        Chains chains = new Chains(count, pairs.low(), pairs.high(), barredUnknown);
        chainStart = new int[chains.count() + 1];
        Arrays.setAll(chainStart, chains::start);
        int[] turn = innerFirst(chains);
        endA = ends(turn, chains.count(), chains::before);
        endB = ends(turn, chains.count(), chains::behind);
        across = new int[chains.count()];
        Pairs rest = rest(turn, pairs);
        int[] place = reordered(turn, rest);
        restLow = rest.low();
        restHigh = rest.high();
        renumberRest(place);
        for (int knot = 0; knot < held.length; knot++) {
            unknownOfKnot[knot] = held[knot] ? -1 : turn[unknownOfKnot[knot]];
        }
        linkOfPipe = new int[knotA.length];
        Pairs renumbered = new Pairs(restLow.length);
        for (int e = 0; e < restLow.length; e++) {
            renumbered.place(restLow[e], restHigh[e]);
        }
        int[] chainOf = chainOf();
        for (int i = 0; i < linkOfPipe.length; i++) {
            linkOfPipe[i] = link(unknownOfKnot[knotA[i]], unknownOfKnot[knotB[i]], chainOf, renumbered);
        }
    }

    private Pairs pairs(int[] knotA, int[] knotB) {
        Pairs pairs = new Pairs(knotA.length);
        for (int i = 0; i < knotA.length; i++) {
            int a = unknownOfKnot[knotA[i]];
            int b = unknownOfKnot[knotB[i]];
            if (a >= 0 && b >= 0 && a != b) {
                pairs.place(a, b);
            }
        }
        return pairs;
    }

    private int[] innerFirst(Chains chains) {
        int[] turn = new int[count];
        Arrays.fill(turn, -1);
        for (int place = 0; place < chains.size(); place++) {
            turn[chains.vertex(place)] = place;
        }
        int next = chains.size();
        for (int v = 0; v < count; v++) {
            turn[v] = turn[v] < 0 ? next++ : turn[v];
        }
        return turn;
    }

    private int[] ends(int[] turn, int chains, java.util.function.IntUnaryOperator vertex) {
        int[] ends = new int[chains];
        Arrays.setAll(ends, c -> vertex.applyAsInt(c) < 0 ? count : turn[vertex.applyAsInt(c)]);
        return ends;
    }

    /** Links among the rest: those that pipes make, and those that chains leave between their ends. */
    private Pairs rest(int[] turn, Pairs pairs) {
        int inner = inner();
        Pairs rest = new Pairs(across.length);
        int[] low = pairs.low();
        int[] high = pairs.high();
        for (int e = 0; e < low.length; e++) {
            if (turn[low[e]] >= inner && turn[high[e]] >= inner) {
                rest.place(turn[low[e]] - inner, turn[high[e]] - inner);
            }
        }
        for (int c = 0; c < across.length; c++) {
            boolean joins = endA[c] < count && endB[c] < count && endA[c] != endB[c];
            across[c] = joins ? rest.place(endA[c] - inner, endB[c] - inner) : -1;
        }
        for (int c = 0; c < across.length; c++) {
            across[c] = across[c] < 0 ? rest.count() : across[c];
        }
        return rest;
    }

    /** Reorders the rest; returns the new place of each. */
    private int[] reordered(int[] turn, Pairs rest) {
        int inner = inner();
        int[] order = MinimumDegree.order(count - inner, rest.low(), rest.high());
        int[] place = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            place[order[k]] = k;
        }
        for (int v = 0; v < count; v++) {
            turn[v] = turn[v] < inner ? turn[v] : inner + place[turn[v] - inner];
        }
        return place;
    }

    private void renumberRest(int[] place) {
        for (int e = 0; e < restLow.length; e++) {
            int one = place[restLow[e]];
            int other = place[restHigh[e]];
            restLow[e] = Math.min(one, other);
            restHigh[e] = Math.max(one, other);
        }
        for (int c = 0; c < endA.length; c++) {
            endA[c] = endA[c] == count ? count : inner() + place[endA[c] - inner()];
            endB[c] = endB[c] == count ? count : inner() + place[endB[c] - inner()];
        }
    }

    private int[] chainOf() {
        int[] chainOf = new int[inner()];
        for (int c = 0; c < across.length; c++) {
            Arrays.fill(chainOf, chainStart[c], chainStart[c + 1], c);
        }
        return chainOf;
    }

    private int link(int a, int b, int[] chainOf, Pairs rest) {
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        int inner = inner();
        if (low < 0 || low == high) {
            return links();
        }
        if (low >= inner) {
            return inner + across.length + rest.place(low - inner, high - inner);
        }
        boolean first = high >= inner && low == chainStart[chainOf[low]] && high == endA[chainOf[low]];
        return first ? inner + chainOf[low] : low;
    }

    /** How many unknowns are inner to chains. */
    int inner() {
        return chainStart[chainStart.length - 1];
    }

    /** How many links there are, the one that leads nowhere left out: its number. */
    int links() {
        return inner() + across.length + restLow.length;
    }

    /** The chain that a link belongs to; the number of chains when it belongs to the rest. */
    int chainOfUnknown(int unknown) {
        if (unknown < 0 || unknown >= inner()) {
            return across.length;
        }
        int found = Arrays.binarySearch(chainStart, unknown);
        return found >= 0 ? found : -found - 2;
    }
}
