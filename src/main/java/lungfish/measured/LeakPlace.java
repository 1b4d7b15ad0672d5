package lungfish.measured;

import java.util.List;
import lungfish.piping.Stretch;

/**
 * A part of the pipe between valves, and how probable it is that the leak is there.
 *
 * @param stretches of the drawing that it is made of
 */
public record LeakPlace(List<Stretch> stretches, double probability) {
    public LeakPlace {
        stretches = List.copyOf(stretches);
    }

    /** Length of its pipe, m. */
    public double lengthM() {
        return stretches.stream()
                .mapToDouble(stretch -> stretch.toM() - stretch.fromM())
                .sum();
    }
}
