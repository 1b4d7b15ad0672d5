package lungfish.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.room.Wishes.Wish;

/**
 * Puts every candidate in the room's places and says which fit, and which limit the others break. Sizing is for the tired
 * end of a machine's life; rating and heat are judged new, when it pushes hardest.
 */
public final class Bench {
    /** Mains within this share of a class's voltage are the same mains (IEC 60038 allows 10 %). */
    private static final double SAME_MAINS = 0.1;

    private final Needed needed;
    private final Asked asked;
    private final Function<Fleet, OptionalDouble> levelDba;

    /**
     * For a room.
     *
     * @param levelDba the level of a fleet at the listener; empty where nobody knows it
     */
    public Bench(Needed needed, Asked asked, Function<Fleet, OptionalDouble> levelDba) {
        this.needed = needed;
        this.asked = asked;
        this.levelDba = levelDba;
    }

    /** The verdict on one fleet. */
    public Candidate verdict(Fleet fleet) {
        Runs runs = new Runs(needed.pressurePa(), needed.freeM3PerS(), asked.sparePa());
        Running tired = runs.of(fleet, Wear.TIRED);
        Running fresh = runs.of(fleet, Wear.NEW);
        double gives = fleet.freeAt(needed.pressurePa(), Wear.TIRED);
        double reserve = needed.freeM3PerS() > 0 ? gives / needed.freeM3PerS() - 1 : 0;
        OptionalDouble dba = levelDba.apply(fleet);
        return new Candidate(fleet, tired, fresh, reserve, dba, broken(fleet, fresh, gives, reserve, dba));
    }

    /**
     * All candidates: those that fit, those that serve but for a wish (rather too loud than no room to grow), then those that do not serve, the nearest first and those of another mains last. Within the first group, in the order that the keeper wishes.
     */
    public List<Candidate> rank(Fleet places, List<BlowerClass> classes) {
        Comparator<Candidate> order = Comparator.comparing((Candidate each) -> !each.suitsMains())
                .thenComparing(each -> !each.serves())
                .thenComparingDouble(Candidate::distance)
                .thenComparing(each -> !each.fits())
                .thenComparing(Candidate::lacksReserve)
                .thenComparing(wished());
        return classes.stream()
                .map(kind -> verdict(places.as(kind)))
                .sorted(order)
                .toList();
    }

    private List<Limit.Broken> broken(Fleet fleet, Running fresh, double gives, double reserve, OptionalDouble dba) {
        List<Limit.Broken> broken = new ArrayList<>();
        addMains(fleet, broken);
        addAir(fleet, gives, reserve, broken);
        fleet.overRating(Math.max(fresh.gaugePa(), needed.pressurePa()), Wear.NEW)
                .ifPresent(broken::add);
        if (fresh.freeM3PerS() < fleet.leastM3PerS()) {
            broken.add(Limit.LEAST_FLOW.broken(fresh.freeM3PerS(), fleet.leastM3PerS()));
        }
        if (fresh.discharge().coolK() > asked.warmestPipeK()) {
            broken.add(Limit.HEAT.broken(fresh.discharge().coolK(), asked.warmestPipeK()));
        }
        dba.ifPresent(level -> asked.loudestDba().ifPresent(loudest -> {
            if (level > loudest) {
                broken.add(Limit.NOISE.broken(level, loudest));
            }
        }));
        return broken;
    }

    private void addAir(Fleet fleet, double gives, double reserve, List<Limit.Broken> broken) {
        double shutPa = fleet.shutPa(Wear.TIRED);
        if (shutPa <= needed.pressurePa()) {
            broken.add(Limit.PRESSURE.broken(shutPa, needed.pressurePa()));
        } else if (gives < needed.freeM3PerS()) {
            broken.add(Limit.FLOW.broken(gives, needed.freeM3PerS()));
        } else if (reserve < asked.reserveShare()) {
            broken.add(Limit.RESERVE.broken(reserve, asked.reserveShare()));
        }
    }

    private void addMains(Fleet fleet, List<Limit.Broken> broken) {
        fleet.placed().stream()
                .flatMap(each -> otherMains(each.machine().kind(), asked).stream())
                .findFirst()
                .ifPresent(broken::add);
    }

    /** The mains that a class is made for, where they are not the room's. */
    public static Optional<Limit.Broken> otherMains(BlowerClass kind, Asked asked) {
        double mains = asked.mainsV().orElse(0);
        double made = kind.voltageV().orElse(mains);
        boolean differ = asked.mainsV().isPresent() && Math.abs(made - mains) > SAME_MAINS * mains;
        return differ ? Optional.of(Limit.MAINS.broken(made, mains)) : Optional.empty();
    }

    private Comparator<Candidate> wished() {
        List<Wish> order = new ArrayList<>(asked.order());
        for (Wish wish : Wish.values()) {
            if (!order.contains(wish)) {
                order.add(wish);
            }
        }
        Comparator<Candidate> by = comparing(order.get(0));
        for (Wish wish : order.subList(1, order.size())) {
            by = by.thenComparing(comparing(wish));
        }
        return by.thenComparing(each -> each.kind().id());
    }

    private static Comparator<Candidate> comparing(Wish wish) {
        return switch (wish) {
            case SMALLEST ->
                Comparator.comparingDouble((Candidate each) -> each.kind().ratedM3PerS());
            case CHEAPEST ->
                Comparator.comparingDouble((Candidate each) -> each.kind().price());
            case QUIETEST -> Comparator.comparingDouble(each -> each.dba().orElse(Double.MAX_VALUE));
        };
    }
}
