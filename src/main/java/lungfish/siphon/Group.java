package lungfish.siphon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What water reaches without rising above some height: ends of ways, and the outlets by which it leaves its tanks. */
final class Group {
    private static final Comparator<Source> HIGHEST_FIRST = Comparator.comparingDouble(Source::lineM)
            .thenComparingDouble(Source::mostM3)
            .reversed();

    private final List<Integer> ends = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private boolean isSorted = true;

    /**
     * An outlet by which water leaves, with its figures at hand.
     *
     * @param number its place among the outlets
     */
    record Source(Leaving leaving, int number, double lineM, double mostM3) {
        static Source of(Leaving leaving, int number) {
            return new Source(leaving, number, leaving.lineM(), leaving.mostM3());
        }
    }

    void addEnd(int end) {
        ends.add(end);
    }

    void addSource(Source source) {
        sources.add(source);
        isSorted = false;
    }

    /** Takes in all of another group. */
    void takeIn(Group other) {
        ends.addAll(other.ends);
        sources.addAll(other.sources);
        isSorted = isSorted && other.sources.isEmpty();
    }

    int size() {
        return ends.size() + sources.size();
    }

    /** The numbers of the ends. */
    List<Integer> ends() {
        return ends;
    }

    /** The one with the highest line first; of one line, the one with the most water. */
    List<Source> sources() {
        if (!isSorted) {
            sources.sort(HIGHEST_FIRST);
            isSorted = true;
        }
        return sources;
    }
}
