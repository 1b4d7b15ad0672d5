package lungfish.growth;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.sizing.Fleet;

/**
 * A room as it grows, step by step, on the blower of now.
 *
 * @param blower that of now
 * @param recommended whether the plan chose it
 * @param all the stages, now first; a room that has no outlets yet begins with its first step
 * @param foresight the cheapest class that, bought today, carries all of them with as many machines; absent where none does
 */
public record Stages(Fleet blower, boolean recommended, List<Stage> all, Optional<Foresight> foresight) {
    public Stages {
        all = List.copyOf(all);
    }

    /**
     * A class to buy today.
     *
     * @param machines how many
     * @param price of all of them
     * @param more than the blower of now costs; negative: less
     */
    public record Foresight(BlowerClass kind, int machines, double price, double more) {}

    /** The first stage that breaks. */
    public Optional<Stage> firstToBreak() {
        return all.stream().filter(stage -> stage.state() == Stage.State.BREAKS).findFirst();
    }

    /** Whether any rack is planned. */
    public boolean hasSteps() {
        return all.stream().anyMatch(stage -> !stage.when().isNow());
    }
}
