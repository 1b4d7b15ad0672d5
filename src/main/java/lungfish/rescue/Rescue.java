package lungfish.rescue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.backup.Habits;
import lungfish.outage.Vessel;
import lungfish.oxygen.Levels;
import lungfish.reason.Given;

/**
 * What keeps the tanks of a room alive.
 *
 * @param wantedS for how long they should live without the mains
 * @param habits how soon people do what they do, in the room as it is
 * @param plannedBlower whether the air is that of the blower as planned, not of the pumps of today
 * @param vessels the tanks in place
 * @param now the room as it is
 * @param tried each means by itself, those of one kind together
 * @param all the cheapest set that keeps all tanks
 * @param essential the cheapest set that keeps the essential tanks; absent where none is marked
 * @param unfit gear of which no class on sale is large enough
 * @param drilled how many drills were played for it
 */
public record Rescue(
        Given wantedS,
        Habits habits,
        Levels levels,
        boolean plannedBlower,
        List<Vessel> vessels,
        Tried now,
        List<Tried> tried,
        Cheapest all,
        Optional<Cheapest> essential,
        List<Unfit> unfit,
        int drilled) {
    public Rescue {
        vessels = List.copyOf(vessels);
        tried = List.copyOf(tried);
        unfit = List.copyOf(unfit);
    }

    /** Tanks of which something is known, so that they could be judged. */
    public int judged() {
        return (int) vessels.stream().filter(Vessel::judged).count();
    }

    public int essentialJudged() {
        return (int) vessels.stream()
                .filter(each -> each.judged() && each.essential())
                .count();
    }

    /** The cheapest sets, those for all tanks first. */
    public List<Cheapest> sets() {
        return Stream.concat(Stream.of(all), essential.stream()).toList();
    }
}
