package lungfish.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.PipeSize;
import lungfish.piping.PipeCount;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/**
 * Looks for the cheapest step that mends a room which has outgrown something; of two at one price, that of fewer parts.
 * Steps are taken from the cheapest up, and each is tried by solving the mended room; one that only makes too much noise, or
 * only empties the battery too soon, is tried again with a silencer or with more battery, in its turn.
 *
 * <p>A machine that the keeper has already costs nothing, but there is one of it: it is no step where several are wanted.
 */
final class Mending {
    /** No more than so many steps are taken at once. */
    private static final int AT_ONCE = 4;

    /** No more than so many are tried. */
    private static final int MOST = 80;

    /** Beyond the next two sizes no main is laid for one more rack. */
    private static final int SIZES = 2;

    /** Of two at one price, that of fewer steps. */
    static final Comparator<Mend> CHEAPEST_FIRST = Comparator.comparingDouble(Mend::price)
            .thenComparingInt(step -> steps(step).size());

    private final Planner planner;
    private final Basis basis;
    private final Candidate blower;
    private final Runnable between;

    /**
     * For a room that is solved and breaks something.
     *
     * @param between runs between two trials, and may throw to stop them
     */
    Mending(Planner planner, Basis basis, Candidate blower, Runnable between) {
        this.planner = planner;
        this.basis = basis;
        this.blower = blower;
        this.between = between;
    }

    /** The cheapest that works; where none does, the cheapest that leaves no more than a wish unmet. */
    Repair cheapest() {
        Queue<Mend> waiting = new PriorityQueue<>(CHEAPEST_FIRST);
        waiting.addAll(first());
        Repair second = new Repair(Optional.empty(), Optional.empty(), 0);
        int tried = 0;
        while (!waiting.isEmpty() && tried < MOST) {
            between.run();
            Mend step = waiting.remove();
            tried++;
            Optional<List<Limit.Broken>> broken = broken(step);
            if (works(broken)) {
                return new Repair(Optional.of(needful(step)), Optional.empty(), tried);
            }
            List<Limit.Broken> wishes = broken.filter(Mending::areWishes).orElse(List.of());
            wishes.forEach(wish -> waiting.addAll(with(step, wish.limit())));
            if (second.mend().isEmpty() && !wishes.isEmpty()) {
                second = new Repair(Optional.of(step), Optional.of(wishes.get(0)), tried);
            }
        }
        return new Repair(second.mend(), second.still(), tried);
    }

    /** What a mended room still breaks; empty where it cannot be solved. */
    private Optional<List<Limit.Broken>> broken(Mend step) {
        return planner.basis(step.in(basis.room())).map(mended -> Breaks.of(mended, mended.chosen()));
    }

    private static boolean works(Optional<List<Limit.Broken>> broken) {
        return broken.filter(List::isEmpty).isPresent();
    }

    /** The same without whatever it works without: a step may have been taken for what a later one mends as well. */
    private Mend needful(Mend works) {
        List<Mend> needed = new ArrayList<>(steps(works));
        for (Mend step : steps(works)) {
            List<Mend> rest = new ArrayList<>(needed);
            rest.remove(step);
            between.run();
            if (!rest.isEmpty() && works(broken(together(rest)))) {
                needed = rest;
            }
        }
        return together(needed);
    }

    private static List<Mend> steps(Mend mend) {
        return mend instanceof Mend.Together several ? several.steps() : List.of(mend);
    }

    private static Mend together(List<Mend> steps) {
        return steps.size() == 1 ? steps.get(0) : new Mend.Together(steps);
    }

    private static boolean areWishes(List<Limit.Broken> broken) {
        return broken.stream().allMatch(each -> each.limit().isWish());
    }

    private List<Mend> first() {
        List<Mend> steps = new ArrayList<>(widerPipe());
        bleeds().forEach(bleed -> steps.add(new Mend.Bleed(bleed)));
        Stream.of(blower.fleet().placed().get(0).machine())
                .filter(first -> !first.kind().isAtHand())
                .forEach(first -> steps.add(new Mend.Beside(first)));
        steps.addAll(silencers(basis.room()));
        steps.addAll(batteries());
        for (BlowerClass kind : basis.buyable()) {
            between.run();
            if (areWishes(Breaks.of(basis, basis.judge(kind)))) {
                steps.add(new Mend.Exchange(kind, blower.fleet().machines()));
            }
        }
        return steps;
    }

    /** Every other way to treat the surplus; a room that does not say is bled to what it needs already. */
    private List<Blower.Bleed> bleeds() {
        Blower.Bleed present = blower.fleet().bleed();
        Blower.Bleed asNeeded = new Blower.BledTo(OptionalDouble.empty());
        return Stream.of(asNeeded, new Blower.Unbled())
                .filter(bleed -> !bleed.equals(present instanceof Blower.Unsaid ? asNeeded : present))
                .toList();
    }

    /** A step together with what may meet the wish that it leaves unmet. */
    private List<Mend> with(Mend step, Limit unmet) {
        List<Mend> done = steps(step);
        boolean isSilenced = done.stream().anyMatch(Mend.Silencer.class::isInstance);
        List<? extends Mend> more = unmet == Limit.NOISE && !isSilenced
                ? silencers(step.in(basis.room()))
                : unmet == Limit.RUNTIME ? batteries() : List.of();
        return done.size() >= AT_ONCE
                ? List.of()
                : more.stream()
                        .<Mend>map(next -> new Mend.Together(joined(done, next)))
                        .toList();
    }

    private static List<Mend> joined(List<Mend> done, Mend next) {
        List<Mend> all = new ArrayList<>(done);
        all.add(next);
        return all;
    }

    private List<Mend> batteries() {
        return basis.room().backup().batteries().stream()
                .limit(1)
                .flatMap(battery -> basis.catalogue().battery(battery.kind()).stream()
                        .<Mend>map(kind -> new Mend.MoreBattery(battery, kind)))
                .toList();
    }

    private List<Mend.Silencer> silencers(Room room) {
        int pieces = room.blowers(Blower.Role.PLANNED).stream()
                .filter(each -> each.fittings().silencer().isEmpty())
                .mapToInt(Blower::count)
                .sum();
        return basis.catalogue().accessories().stream()
                .filter(each -> pieces > 0 && each.kind() != AccessoryClass.Kind.INLET_FILTER)
                .map(each -> new Mend.Silencer(each, pieces))
                .toList();
    }

    /** The size of which most is laid, in the next sizes of its standard. */
    List<Mend> widerPipe() {
        Map<String, Double> lengths = PipeCount.of(basis.room()).lengthM();
        Optional<PipeSize> main = lengths.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .flatMap(most -> basis.catalogue().pipe(most.getKey()));
        return main.stream()
                .flatMap(size -> basis.catalogue().pipes().stream()
                        .filter(wider -> wider.standard().equals(size.standard()) && wider.boreM() > size.boreM())
                        .sorted(Comparator.comparingDouble(PipeSize::boreM))
                        .limit(SIZES)
                        .<Mend>map(wider -> new Mend.WiderPipe(
                                size.id(), wider, lengths.getOrDefault(size.id(), 0.0), fittings(size))))
                .toList();
    }

    /** What is bought anew with the runs of a size: the fittings that the room would not have without them. */
    private double fittings(PipeSize size) {
        Room room = basis.room();
        Room rest = room.withRuns(room.runs().stream()
                .filter(run -> !run.size().equals(size.id()))
                .toList());
        return planner.pipePrice(room).fittings() - planner.pipePrice(rest).fittings();
    }
}
