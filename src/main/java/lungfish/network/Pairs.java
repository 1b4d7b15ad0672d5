package lungfish.network;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Pairs of numbers, each once however often and in whichever order it is named. */
final class Pairs {
    private final Map<Long, Integer> known;
    private int[] low;
    private int[] high;

    Pairs(int expected) {
        known = new HashMap<>(2 * expected);
        low = new int[expected];
        high = new int[expected];
    }

    /** The place of a pair, which is new at the end if it was not there. */
    int place(int one, int other) {
        int least = Math.min(one, other);
        int most = Math.max(one, other);
        int next = known.size();
        int place = known.computeIfAbsent(((long) least << Integer.SIZE) | most, pair -> next);
        if (place == next) {
            if (place == low.length) {
                low = Arrays.copyOf(low, 2 * place + 2);
                high = Arrays.copyOf(high, low.length);
            }
            low[place] = least;
            high[place] = most;
        }
        return place;
    }

    int count() {
        return known.size();
    }

    /** The lesser of each pair. */
    int[] low() {
        return Arrays.copyOf(low, count());
    }

    /** The greater of each pair. */
    int[] high() {
        return Arrays.copyOf(high, count());
    }
}
