package lungfish.network;

import java.util.Arrays;

/** Pipes or leaves in the order of the chains that they belong to, and at the end those of the rest. */
final class Blocks {
    private final Slots slots;
    private final int[] begin;
    private final int[] edgeEnd;

    /** In the network, of each one here. */
    final int[] order;

    private Blocks(Numbering numbering, int[] slot) {
        int chains = numbering.across.length;
        slots = new Slots(numbering.inner() + chains + 1, slot);
        order = slots.order;
        begin = new int[chains + 2];
        edgeEnd = new int[chains];
        for (int c = 0; c <= chains; c++) {
            begin[c] = slots.first(numbering.chainStart[c] + c);
        }
        begin[chains + 1] = order.length;
        for (int c = 0; c < chains; c++) {
            edgeEnd[c] = slots.first(numbering.chainStart[c] + c + 1);
        }
    }

    /** Pipes: of each chain first those that lead to its ends, then along it. */
    static Blocks ofPipes(Numbering numbering, int[] knotA, int[] knotB) {
        int[] slot = new int[knotA.length];
        Arrays.setAll(slot, i -> {
            int a = numbering.unknownOfKnot[knotA[i]];
            int b = numbering.unknownOfKnot[knotB[i]];
            int inner = numbering.inner();
            boolean edge = a >= inner || b >= inner;
            int first = a < 0 ? b : b < 0 ? a : Math.min(a, b);
            return slot(numbering, first, edge);
        });
        return new Blocks(numbering, slot);
    }

    /** Leaves: along each chain. */
    static Blocks ofLeaves(Numbering numbering, int[] knot) {
        int[] slot = new int[knot.length];
        Arrays.setAll(slot, i -> slot(numbering, numbering.unknownOfKnot[knot[i]], false));
        return new Blocks(numbering, slot);
    }

    private static int slot(Numbering numbering, int unknown, boolean edge) {
        int chain = numbering.chainOfUnknown(unknown);
        if (chain == numbering.across.length) {
            return numbering.inner() + chain;
        }
        return edge ? numbering.chainStart[chain] + chain : unknown + chain + 1;
    }

    /** Where a block begins; that of the next block is its end. */
    int begin(int block) {
        return begin[block];
    }

    /** Where those that lead to the ends of a chain end; they begin where it does. */
    int edgeEnd(int chain) {
        return edgeEnd[chain];
    }

    /** How many there are. */
    int count() {
        return order.length;
    }

    /** Numbers of the network, in the order here. */
    int[] inOrder(int[] ofNetwork) {
        int[] here = new int[order.length];
        Arrays.setAll(here, i -> ofNetwork[order[i]]);
        return here;
    }

    /** Figures in the order here, put back into that of the network. */
    void write(double[] here, double[] ofNetwork) {
        for (int i = 0; i < order.length; i++) {
            ofNetwork[order[i]] = here[i];
        }
    }
}
