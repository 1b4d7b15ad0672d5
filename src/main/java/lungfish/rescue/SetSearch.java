package lungfish.rescue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The cheapest set of means with which none of some tanks comes into danger in any hazard.
 *
 * <p>Means that do something in one hazard only (batteries, a generator, a standby) are chosen for each hazard on its own,
 * given those that do something in all (an alarm, battery pumps): sums of prices split so, and so do the drills. Along a
 * line of rising amounts each set keeps what the one before keeps, so the least that is enough is found by halving. Along a
 * line of those that do something in all, what else is needed only falls: a piece of it costs at least its own beginning and
 * what is needed at its end, and is left where that is no better than the best so far (branch and bound).
 */
final class SetSearch {
    private final List<Line> shared;
    private final Map<Hazard, List<Line>> own = new HashMap<>();
    private final Trials trials;
    private final List<Integer> vessels;
    private final Map<MeansSet, Optional<MeansSet>> completions = new HashMap<>();
    private Optional<MeansSet> best = Optional.empty();

    SetSearch(List<Slot> slots, Trials trials, List<Integer> vessels) {
        this.trials = trials;
        this.vessels = List.copyOf(vessels);
        this.shared =
                Line.of(slots.stream().filter(slot -> slot.against().size() > 1).toList());
        for (Hazard hazard : Hazard.values()) {
            List<Line> lines = new ArrayList<>(Line.of(slots.stream()
                    .filter(slot -> slot.against().equals(Set.of(hazard)))
                    .toList()));
            lines.sort(Comparator.comparing(Line::least, MeansSet.CHEAPEST_FIRST));
            own.put(hazard, lines);
        }
    }

    /** The set; empty where none keeps them all. */
    Optional<MeansSet> cheapest() {
        shared.stream()
                .sorted(Comparator.comparing(Line::least, MeansSet.CHEAPEST_FIRST))
                .forEach(line -> along(line, 0, line.sets().size() - 1));
        return best;
    }

    private void along(Line line, int from, int to) {
        Optional<MeansSet> atEnd = completion(line.sets().get(to));
        MeansSet begins = line.sets().get(from);
        if (atEnd.isEmpty() || !isBetter(begins.and(atEnd.get()))) {
            return;
        }
        Optional<MeansSet> atBeginning = completion(begins);
        atBeginning.map(begins::and).filter(this::isBetter).ifPresent(found -> best = Optional.of(found));
        if (from < to && !costAlike(atBeginning, atEnd.get())) {
            int middle = (from + 1 + to) / 2;
            along(line, from + 1, middle);
            if (middle < to) {
                along(line, middle + 1, to);
            }
        }
    }

    private boolean isBetter(MeansSet set) {
        return best.map(set::isCheaperThan).orElse(true);
    }

    private static boolean costAlike(Optional<MeansSet> one, MeansSet other) {
        return one.filter(set -> MeansSet.CHEAPEST_FIRST.compare(set, other) == 0)
                .isPresent();
    }

    /** The least that is needed beside these, of all hazards; empty where nothing is enough. */
    private Optional<MeansSet> completion(MeansSet with) {
        Optional<MeansSet> known = completions.get(with);
        if (known == null) {
            known = completed(with);
            completions.put(with, known);
        }
        return known;
    }

    private Optional<MeansSet> completed(MeansSet with) {
        MeansSet all = MeansSet.NOTHING;
        for (Hazard hazard : Hazard.values()) {
            Optional<MeansSet> needed = cheapest(hazard, with);
            if (needed.isEmpty()) {
                return Optional.empty();
            }
            all = all.and(needed.get());
        }
        return Optional.of(all);
    }

    private Optional<MeansSet> cheapest(Hazard hazard, MeansSet with) {
        Optional<MeansSet> cheapest = Optional.empty();
        for (Line line : own.getOrDefault(hazard, List.of())) {
            boolean mayBeBetter = cheapest.map(line.least()::isCheaperThan).orElse(true);
            if (mayBeBetter && keeps(hazard, with.and(line.most()))) {
                MeansSet least = least(hazard, with, line);
                cheapest = cheapest.filter(now -> !least.isCheaperThan(now)).or(() -> Optional.of(least));
            }
        }
        return cheapest;
    }

    /** The first of a line that is enough; its last is. */
    private MeansSet least(Hazard hazard, MeansSet with, Line line) {
        int low = 0;
        int high = line.sets().size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (keeps(hazard, with.and(line.sets().get(middle)))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return line.sets().get(high);
    }

    private boolean keeps(Hazard hazard, MeansSet set) {
        return trials.of(hazard, set).keepsAll(vessels);
    }

    /** Every most of everything, for a hazard: where none of them keeps a tank, nothing does. */
    List<MeansSet> mosts(Hazard hazard) {
        List<MeansSet> all = new ArrayList<>();
        for (Line common : shared) {
            for (Line line : own.getOrDefault(hazard, List.of())) {
                all.add(common.most().and(line.most()));
            }
        }
        all.sort(MeansSet.CHEAPEST_FIRST.reversed());
        return all;
    }

    /** Every most of everything, for all hazards at once. */
    List<MeansSet> mosts() {
        List<MeansSet> all = new ArrayList<>();
        for (Line common : shared) {
            for (Line mains : own.getOrDefault(Hazard.MAINS, List.of())) {
                for (Line blower : own.getOrDefault(Hazard.BLOWER, List.of())) {
                    all.add(common.most().and(mains.most()).and(blower.most()));
                }
            }
        }
        return all;
    }
}
