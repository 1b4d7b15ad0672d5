package lungfish.headroom;

import java.util.function.IntPredicate;

/** Finds the last whole number of which something holds, where it holds up to there and never beyond. */
final class LastThatHolds {
    private final IntPredicate holds;
    private int low;
    private int high;

    private LastThatHolds(int most, IntPredicate holds) {
        this.holds = holds;
        this.high = most + 1;
    }

    /**
     * The number, from 0 (of which it is known to hold) to {@code most}.
     *
     * @param guess with a good one, two questions are enough; else the strides from it double, and then the gap is halved
     */
    static int find(int guess, int most, IntPredicate holds) {
        LastThatHolds search = new LastThatHolds(most, holds);
        int first = Math.max(1, Math.min(guess, most));
        search.ask(first);
        if (search.low == first) {
            search.upwards(most);
        } else {
            search.downwards();
        }
        while (search.high - search.low > 1) {
            search.ask((search.low + search.high) / 2);
        }
        return search.low;
    }

    private void ask(int number) {
        if (holds.test(number)) {
            low = number;
        } else {
            high = number;
        }
    }

    private void upwards(int most) {
        for (int stride = 1; high > most && low < most; stride *= 2) {
            ask(Math.min(most, low + stride));
        }
    }

    private void downwards() {
        for (int stride = 1; low == 0 && high > 1; stride *= 2) {
            ask(Math.max(1, high - stride));
        }
    }
}
