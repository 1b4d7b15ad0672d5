package lungfish.oxygen;

import java.util.List;
import java.util.OptionalDouble;

/** The oxygen of a tank over time, from time 0 to an end. */
public final class Course {
    /**
     * Where the oxygen came from and went, in g for each m³ of water: the change is what came less what was used.
     *
     * @param surface came through the surface
     * @param bubbles came with the bubbles
     * @param used by fish and bacteria
     */
    public record Budget(double surface, double bubbles, double used) {
        /** By how much the level changed, g/m³. */
        public double change() {
            return surface + bubbles - used;
        }
    }

    private final List<Step> steps;
    private final Budget budget;

    /** A course of one step or more, each beginning where the one before ends. */
    Course(List<Step> steps, Budget budget) {
        this.steps = List.copyOf(steps);
        this.budget = budget;
    }

    public Budget budget() {
        return budget;
    }

    /** The level at a time, g/m³; that at the end for later ones. */
    public double atS(double seconds) {
        int low = 0;
        int high = steps.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (steps.get(middle).toS() < seconds) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        Step step = steps.get(low);
        return step.atS(Math.min(Math.max(seconds, step.fromS()), step.toS()));
    }

    public double startGPerM3() {
        return steps.get(0).fromGPerM3();
    }

    public double endGPerM3() {
        return steps.get(steps.size() - 1).toGPerM3();
    }

    public double endS() {
        return steps.get(steps.size() - 1).toS();
    }

    /** The lowest level, g/m³: at the end of a phase, and so of a step. */
    public double lowestGPerM3() {
        return steps.stream().mapToDouble(Step::toGPerM3).reduce(startGPerM3(), Math::min);
    }

    /** When the oxygen first comes down to a level, s; 0 where it begins there; empty where it does not in this time. */
    public OptionalDouble downToS(double gPerM3) {
        if (startGPerM3() <= gPerM3) {
            return OptionalDouble.of(0);
        }
        return steps.stream()
                .filter(step -> step.comesDownTo(gPerM3))
                .mapToDouble(step -> step.whenDownToS(gPerM3))
                .findFirst();
    }

    int steps() {
        return steps.size();
    }
}
