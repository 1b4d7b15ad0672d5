package lungfish.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;

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
    private final DoubleFunction<Optional<Limit.Broken>> battery;
    private final ToDoubleFunction<Candidate> perYear;

    /**
     * For a room.
     *
     * @param levelDba the level of a fleet at the listener; empty where nobody knows it
     * @param battery by how much a power in watts falls short of the wished time on battery; empty where it does not, where
     *     nothing is wished, and where there is no battery
     * @param perYear what running a candidate costs in a year, in the keeper's currency
     */
    public Bench(
            Needed needed,
            Asked asked,
            Function<Fleet, OptionalDouble> levelDba,
            DoubleFunction<Optional<Limit.Broken>> battery,
            ToDoubleFunction<Candidate> perYear) {
        this.needed = needed;
        this.asked = asked;
        this.levelDba = levelDba;
        this.battery = battery;
        this.perYear = perYear;
    }

    /** The verdict on one fleet. */
    public Candidate verdict(Fleet fleet) {
        Runs runs = new Runs(needed.pressurePa(), needed.freeM3PerS(), asked.sparePa());
        Running tired = runs.of(fleet, Wear.TIRED);
        Running fresh = runs.of(fleet, Wear.NEW);
        double gives = fleet.freeAt(needed.pressurePa(), Wear.TIRED);
        double reserve = needed.freeM3PerS() > 0 ? gives / needed.freeM3PerS() - 1 : 0;
        OptionalDouble dba = levelDba.apply(fleet);
        List<Limit.Broken> broken = broken(fleet, fresh, gives, reserve, dba);
        if (tired.watts() > 0) {
            battery.apply(tired.watts()).ifPresent(broken::add);
        }
        return new Candidate(fleet, tired, fresh, reserve, dba, broken);
    }

    /** All candidates in places, ranked: see {@link Ranking}. */
    public List<Candidate> rank(Fleet places, List<BlowerClass> classes) {
        List<Candidate> all =
                classes.stream().map(kind -> verdict(places.as(kind))).toList();
        return all.stream().sorted(ranking(all).comparator()).toList();
    }

    /** How candidates stand to each other by the keeper's wishes. */
    public Ranking ranking(List<Candidate> all) {
        return new Ranking(all, asked, perYear);
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
}
