package lungfish.json;

import java.util.ArrayList;
import java.util.List;

/** Gathers the problems of one reading, in the order in which they were met. */
public final class Problems {
    private final List<Problem> all = new ArrayList<>();

    public void add(Place place, String found, String expected) {
        all.add(new Problem(place.pointer(), found, expected));
    }

    public void add(Problem problem) {
        all.add(problem);
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** Those met so far. */
    public List<Problem> all() {
        return List.copyOf(all);
    }
}
