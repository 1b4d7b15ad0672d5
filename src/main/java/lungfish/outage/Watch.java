package lungfish.outage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An outage of which a tank is followed only when asked for, and only by the cautious figure: for trying many rooms. What it
 * says of a tank is what {@link Drills#play} says.
 */
public final class Watch {
    private final Tanks tanks;
    private final List<Stretch> stretches;
    private final Map<Integer, OptionalDouble> known = new HashMap<>();

    Watch(Tanks tanks, List<Stretch> stretches) {
        this.tanks = tanks;
        this.stretches = List.copyOf(stretches);
    }

    /** What runs, one stretch after the other. */
    public List<Stretch> stretches() {
        return stretches;
    }

    /**
     * When a tank comes down to the danger level, or its typed time runs out, s; empty where it does not in this time, and
     * where nothing is known of it.
     *
     * @param vessel its place in {@link Drills#vessels}
     */
    public OptionalDouble dangerS(int vessel) {
        return known.computeIfAbsent(vessel, each -> tanks.dangerS(each, stretches));
    }

    /** Whether a tank gets any air at a time. */
    public boolean breathes(int vessel, double seconds) {
        return stretches.stream()
                .filter(stretch -> seconds < stretch.toS())
                .findFirst()
                .filter(stretch -> tanks.breathes(vessel, stretch))
                .isPresent();
    }
}
