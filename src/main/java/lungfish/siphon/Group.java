package lungfish.siphon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * What water reaches without rising above some height: ends of ways, and the outlets by which it leaves its tanks. It knows
 * which pairs of them were looked at lower down, where they are nearer to each other.
 */
final class Group {
    private static final Comparator<Source> HIGHEST_FIRST = Group::compare;

    private final List<Integer> ends = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();

    /** Sources that have come since the last look. */
    private final List<Source> fresh = new ArrayList<>();

    /** Ends before this one were there at the last look. */
    private int seen;

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

    /** The one with the higher line first; of one line, the one with more water. */
    private static int compare(Source one, Source other) {
        int byLine = Double.compare(other.lineM(), one.lineM());
        return byLine != 0 ? byLine : Double.compare(other.mostM3(), one.mostM3());
    }

    void addEnd(int end) {
        ends.add(end);
    }

    void addSource(Source source) {
        insert(source, sources);
        insert(source, fresh);
    }

    private static void insert(Source source, List<Source> sorted) {
        int at = Collections.binarySearch(sorted, source, HIGHEST_FIRST);
        sorted.add(at < 0 ? -at - 1 : at + 1, source);
    }

    /** Takes in all of another group; of two the larger should take in the smaller. */
    void takeIn(Group other) {
        ends.addAll(other.ends);
        other.sources.forEach(this::addSource);
    }

    int size() {
        return ends.size() + sources.size();
    }

    /**
     * Looks at what has come together since the last time.
     *
     * @param each an end, and the sources that are new to it, the highest line first
     */
    void look(BiConsumer<Integer, List<Source>> each) {
        for (int i = 0; i < ends.size(); i++) {
            List<Source> unseen = i < seen ? fresh : sources;
            if (!unseen.isEmpty()) {
                each.accept(ends.get(i), unseen);
            }
        }
        seen = ends.size();
        fresh.clear();
    }

    /** The numbers of the ends. */
    List<Integer> ends() {
        return ends;
    }

    List<Source> sources() {
        return sources;
    }
}
