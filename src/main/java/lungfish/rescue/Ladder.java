package lungfish.rescue;

import java.util.List;

/**
 * The same means in rising amounts, the cheapest first: where a rung keeps a tank safe, each rung above it does as well.
 */
record Ladder(List<? extends Means> rungs) {
    Ladder {
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty()) {
            throw new IllegalArgumentException("a ladder has a rung");
        }
    }

    static Ladder of(Means only) {
        return new Ladder(List.of(only));
    }

    Means top() {
        return rungs.get(rungs.size() - 1);
    }
}
