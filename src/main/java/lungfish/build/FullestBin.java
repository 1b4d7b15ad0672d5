package lungfish.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The bin with the least slack that holds the largest thing left and some of the others. */
final class FullestBin {
    private final int[] sizes;
    private final List<Integer> open;
    private final Deque<Integer> taken = new ArrayDeque<>();
    private int steps;
    private int slack;
    private List<Integer> best;

    /**
     * A search.
     *
     * @param open what is not yet packed, largest first, one or more
     */
    FullestBin(int[] sizes, int bin, List<Integer> open, int mostSteps) {
        this.sizes = sizes;
        this.open = open;
        this.steps = mostSteps;
        this.slack = bin - sizes[open.get(0)];
        this.best = List.of(open.get(0));
    }

    List<Integer> found() {
        taken.addLast(open.get(0));
        look(1, slack);
        return best;
    }

    private void look(int from, int left) {
        if (left < slack) {
            slack = left;
            best = new ArrayList<>(taken);
        }
        for (int i = from; i < open.size() && slack > 0 && steps > 0; i++) {
            int size = sizes[open.get(i)];
            boolean isSame = i > from && size == sizes[open.get(i - 1)];
            if (size <= left && !isSame) {
                steps--;
                taken.addLast(open.get(i));
                look(i + 1, left - size);
                taken.removeLast();
            }
        }
    }
}
