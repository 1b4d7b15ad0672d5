package lungfish.rescue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import lungfish.backup.BatteryCourse;
import lungfish.backup.Span;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.outage.Drills;
import lungfish.outage.Stretch;
import lungfish.outage.Vessel;
import lungfish.outage.Watch;
import lungfish.plan.Plan;
import lungfish.plan.Progress;
import lungfish.reason.Assumable;
import lungfish.reason.Given;
import lungfish.room.Room;

/** Tries every means that a room may take in the drill, and looks for the cheapest set of them. */
public final class Rescuing {
    /** As long as a charger is waited for. */
    private static final double LONGEST_CHARGE_S = 60.0 * 86_400;

    private final Room room;
    private final Catalogue catalogue;
    private final Drills drills;
    private final Given wantedS;
    private final List<Slot> slots;
    private final List<Unfit> unfit;
    private final Trials trials;
    private final Progress progress;
    private int done;
    private int of = 1;

    private Rescuing(Plan plan, Catalogue catalogue, Drills drills, Given wantedS, Progress progress) {
        this.room = plan.room();
        this.catalogue = catalogue;
        this.drills = drills;
        this.wantedS = wantedS;
        this.progress = progress;
        Offers offers = new Offers(plan, catalogue, drills, wantedS.si());
        this.slots = offers.slots();
        this.unfit = offers.unfit();
        this.trials = new Trials(room, drills, wantedS.si(), () -> progress.at(done, of));
    }

    /** The answer for a plan and the time that its room wishes for; empty where nothing gives air. */
    public static Optional<Rescue> of(Plan plan, Catalogue catalogue, Progress progress) {
        AssumedValue usual = catalogue.assumed(Assumable.RUNTIME);
        return of(plan, catalogue, Given.typedOr(plan.room().wishes().runtimeS(), usual.given()), progress);
    }

    /**
     * The answer for a plan.
     *
     * @param wantedS for how long its tanks should live without the mains, above 0
     */
    public static Optional<Rescue> of(Plan plan, Catalogue catalogue, Given wantedS, Progress progress) {
        return Drills.of(plan, catalogue)
                .map(drills -> new Rescuing(plan, catalogue, drills, wantedS, progress).answer());
    }

    private Rescue answer() {
        List<List<MeansSet>> alone = alone();
        boolean anyEssential = drills.vessels().stream().anyMatch(Rescuing::isEssential);
        of = 1 + alone.size() + (anyEssential ? 2 : 1);
        Tried now = step(() -> tried(MeansSet.NOTHING));
        List<Tried> tried = new ArrayList<>();
        alone.forEach(line -> tried.add(step(() -> tried(fewest(line)))));
        Cheapest all = step(() -> cheapest(Goal.ALL));
        Optional<Cheapest> essential =
                anyEssential ? Optional.of(step(() -> cheapest(Goal.ESSENTIAL))) : Optional.empty();
        progress.at(of, of);
        return new Rescue(
                wantedS,
                drills.habits(),
                drills.levels(),
                drills.isPlannedBlower(),
                drills.vessels(),
                now,
                tried,
                all,
                essential,
                unfit,
                trials.drilled());
    }

    private <T> T step(Supplier<T> work) {
        progress.at(done, of);
        T result = work.get();
        done++;
        return result;
    }

    private static boolean isEssential(Vessel vessel) {
        return vessel.judged() && vessel.essential();
    }

    /** Each kind of means by itself, in rising amounts; batteries also together with what sheds the rest. */
    private List<List<MeansSet>> alone() {
        List<List<MeansSet>> lines = new ArrayList<>();
        Optional<Means> sheds = means(Means.Shedding.class).stream().findFirst();
        for (Slot slot : slots) {
            for (Ladder ladder : slot.ladders()) {
                List<MeansSet> line =
                        ladder.rungs().stream().map(rung -> MeansSet.of(rung)).toList();
                if (ladder.top() instanceof Means.Standby) {
                    line.forEach(each -> lines.add(List.of(each)));
                } else {
                    lines.add(line);
                }
                if (ladder.top() instanceof Means.Battery) {
                    sheds.ifPresent(valve ->
                            lines.add(line.stream().map(each -> each.and(valve)).toList()));
                }
            }
        }
        lines.removeIf(line -> sheds.filter(line.get(0).means().get(0)::equals).isPresent()
                && room.backup().batteries().isEmpty());
        return lines;
    }

    private List<Means> means(Class<? extends Means> kind) {
        return slots.stream()
                .flatMap(slot -> slot.ladders().stream())
                .map(Ladder::top)
                .filter(kind::isInstance)
                .toList();
    }

    /** The first of a line that keeps as many tanks as its last. */
    private MeansSet fewest(List<MeansSet> line) {
        int most = safe(line.get(line.size() - 1));
        int low = 0;
        int high = line.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (safe(line.get(middle)) == most) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return line.get(high);
    }

    /** In all hazards together: it counts a tank once for each. */
    private int safe(MeansSet set) {
        int safe = 0;
        for (Hazard hazard : Hazard.values()) {
            Trials.Trial trial = trials.of(hazard, set);
            safe += (int) vessels(Goal.ALL).stream().filter(trial::keeps).count();
        }
        return safe;
    }

    private List<Integer> vessels(Goal goal) {
        List<Vessel> all = drills.vessels();
        return IntStream.range(0, all.size())
                .filter(i ->
                        all.get(i).judged() && (goal == Goal.ALL || all.get(i).essential()))
                .boxed()
                .toList();
    }

    private Tried tried(MeansSet set) {
        return new Tried(set, outcome(set), fullAgainS(set));
    }

    private Outcome outcome(MeansSet set) {
        Trials.Trial blower = trials.of(Hazard.BLOWER, set);
        return new Outcome(kept(trials.of(Hazard.MAINS, set), trials.lasting(set)), kept(blower, worst(blower)));
    }

    /** Of the blowers that may stand still, the one that leaves the room without air the longest. */
    private static List<Stretch> worst(Trials.Trial trial) {
        return trial.watches().stream()
                .map(Watch::stretches)
                .max(Comparator.comparingDouble(Rescuing::withoutAirS))
                .orElse(List.of());
    }

    private static double withoutAirS(List<Stretch> stretches) {
        return stretches.stream()
                .filter(stretch -> stretch.outletsOn() == 0)
                .mapToDouble(stretch -> stretch.toS() - stretch.fromS())
                .sum();
    }

    private Kept kept(Trials.Trial trial, List<Stretch> stretches) {
        int safe = (int) vessels(Goal.ALL).stream().filter(trial::keeps).count();
        int essential =
                (int) vessels(Goal.ESSENTIAL).stream().filter(trial::keeps).count();
        List<Stretch> aired = unbroken(stretches);
        return aired.isEmpty()
                ? new Kept(safe, essential, OptionalDouble.empty(), OptionalDouble.empty())
                : new Kept(
                        safe,
                        essential,
                        OptionalDouble.of(aired.get(0).fromS()),
                        OptionalDouble.of(aired.get(aired.size() - 1).toS()));
    }

    /** The first stretches of an outage in which any outlet gets air. */
    private static List<Stretch> unbroken(List<Stretch> stretches) {
        List<Stretch> aired = new ArrayList<>();
        for (Stretch stretch : stretches) {
            if (stretch.outletsOn() > 0) {
                aired.add(stretch);
            } else if (!aired.isEmpty()) {
                break;
            }
        }
        return aired;
    }

    /** After the batteries have carried the room for as long as they can, or as is wanted. */
    private OptionalDouble fullAgainS(MeansSet set) {
        Room with = set.in(room);
        List<Span> spans =
                List.of(Span.carrying(wantedS.si(), drills.load().runningW()), Span.charging(LONGEST_CHARGE_S));
        return BatteryCourse.of(with, catalogue, spans).stream()
                .flatMap(course -> course.moments().stream())
                .filter(moment -> moment.atS() > wantedS.si() && moment.share() >= 1)
                .mapToDouble(moment -> moment.atS() - wantedS.si())
                .findFirst();
    }

    private Cheapest cheapest(Goal goal) {
        List<Integer> asked = vessels(goal);
        SetSearch first = new SetSearch(slots, trials, asked);
        Map<Integer, Lost> lost = new LinkedHashMap<>();
        for (Hazard hazard : Hazard.values()) {
            lost(hazard, asked, first).forEach(lost::putIfAbsent);
        }
        List<Integer> keepable =
                asked.stream().filter(vessel -> !lost.containsKey(vessel)).toList();
        SetSearch search = lost.isEmpty() ? first : new SetSearch(slots, trials, keepable);
        MeansSet set = search.cheapest().orElseGet(() -> nearest(search, keepable, lost));
        return new Cheapest(goal, asked.size(), set, outcome(set), List.copyOf(lost.values()));
    }

    /** Those that come into danger with the most of everything, however it is put together. */
    private Map<Integer, Lost> lost(Hazard hazard, List<Integer> asked, SetSearch search) {
        Map<Integer, Lost> lost = new LinkedHashMap<>();
        List<Integer> left = asked;
        for (MeansSet most : search.mosts(hazard)) {
            Trials.Trial trial = trials.of(hazard, most);
            left = left.stream().filter(vessel -> !trial.keeps(vessel)).toList();
            left.forEach(vessel -> lost.merge(vessel, lost(vessel, hazard, trial), Rescuing::later));
        }
        lost.keySet().retainAll(left);
        return lost;
    }

    private static Lost later(Lost one, Lost other) {
        return one.dangerS() >= other.dangerS() ? one : other;
    }

    private Lost lost(int index, Hazard hazard, Trials.Trial trial) {
        Vessel vessel = drills.vessels().get(index);
        boolean isShort = vessel.tank().survivalS().isEmpty()
                && vessel.startGPerM3().orElse(Double.MAX_VALUE)
                        <= drills.levels().dangerGPerM3();
        Lost.Why why = isShort
                ? Lost.Why.SHORT_BEFORE
                : trial.breathesInDanger(index) ? Lost.Why.TOO_LITTLE : Lost.Why.NOT_IN_TIME;
        return new Lost(vessel, hazard, why, trial.dangerS(index).orElseThrow());
    }

    /** Each could be kept, but no set keeps them all at once: the one that keeps most; the others are lost. */
    private MeansSet nearest(SetSearch search, List<Integer> keepable, Map<Integer, Lost> lost) {
        MeansSet nearest = MeansSet.NOTHING;
        long most = -1;
        for (MeansSet set : search.mosts()) {
            long keeps = keepable.stream().filter(vessel -> keeps(set, vessel)).count();
            if (keeps > most || (keeps == most && set.isCheaperThan(nearest))) {
                nearest = set;
                most = keeps;
            }
        }
        for (int vessel : keepable) {
            for (Hazard hazard : Hazard.values()) {
                Trials.Trial trial = trials.of(hazard, nearest);
                if (!trial.keeps(vessel)) {
                    lost.putIfAbsent(vessel, lost(vessel, hazard, trial));
                }
            }
        }
        return nearest;
    }

    private boolean keeps(MeansSet set, int vessel) {
        return trials.of(Hazard.MAINS, set).keeps(vessel)
                && trials.of(Hazard.BLOWER, set).keeps(vessel);
    }
}
