package lungfish.network;

/** Things sorted by the slot that each belongs to, equal ones in their old order. */
final class Slots {
    private final int[] first;

    /** The things in the order of their slots. */
    final int[] order;

    Slots(int slots, int[] slotOf) {
        first = new int[slots + 1];
        order = new int[slotOf.length];
        for (int slot : slotOf) {
            first[slot + 1]++;
        }
        for (int slot = 0; slot < slots; slot++) {
            first[slot + 1] += first[slot];
        }
        int[] next = first.clone();
        for (int i = 0; i < slotOf.length; i++) {
            order[next[slotOf[i]]++] = i;
        }
    }

    /** Place in the order where the things of a slot begin; those of the slot before end there. */
    int first(int slot) {
        return first[slot];
    }
}
