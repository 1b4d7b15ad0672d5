package lungfish.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lungfish.room.Wishes.Wish;

/**
 * The order of candidates by what the keeper wishes. Figures are almost never equal, so a wish that compared them exactly
 * would leave nothing to the wishes after it: differences too small to matter are ties. Each figure is counted in steps
 * from the best one that serves, so that one candidate stands in one step whomever it is compared with, and the order
 * cannot run in a circle.
 */
public final class Ranking {
    /** Just heard by most people when two sounds are compared one after the other: common practice, no source. */
    public static final double LEVEL_STEP_DB = 3;
    /** A difference of money, size or life that hardly decides a purchase, as a factor: our own choice. */
    public static final double STEP_FACTOR = 1.1;
    /** Of the reserve, as a share of the targets; and of the time on battery, as a share of what is wished. */
    public static final double RESERVE_STEP = 0.05;

    /** So that a figure just at the end of a step stands in the next one whatever its last digit. */
    private static final double ROUNDING = 1e-9;

    /** More steps than any level is long. */
    private static final double FAR = 1e3;

    private static final double LAST = 1e6;

    private final List<Candidate> among;
    private final List<Wish> order;
    private final ToDoubleFunction<Candidate> perYear;
    private final double bestDba;
    private final double smallest;
    private final double cheapest;
    private final double cheapestToRun;
    private final double longestS;

    /**
     * The ranking among candidates.
     *
     * @param perYear what running one costs in a year
     */
    Ranking(List<Candidate> all, Asked asked, ToDoubleFunction<Candidate> perYear) {
        List<Candidate> serving =
                all.stream().filter(each -> each.suitsMains() && each.serves()).toList();
        this.among = serving.isEmpty() ? all : serving;
        this.order = Wish.whole(asked.order());
        this.perYear = perYear;
        this.bestDba = least(each -> each.dba().orElse(Double.MAX_VALUE));
        this.smallest = least(each -> each.kind().ratedM3PerS());
        this.cheapest = least(each -> each.kind().price());
        this.cheapestToRun = least(perYear);
        this.longestS = -least(each -> -each.kind().lifeS());
    }

    private double least(ToDoubleFunction<Candidate> figure) {
        return among.stream().mapToDouble(figure).min().orElse(0);
    }

    /** Every wish, the one that matters most first. */
    public List<Wish> order() {
        return order;
    }

    /**
     * Those that serve before those that do not, the nearest first and those of another mains last; then wish by wish; and
     * by id where no wish tells two apart.
     */
    Comparator<Candidate> comparator() {
        Comparator<Candidate> by = Comparator.comparing((Candidate each) -> !each.suitsMains())
                .thenComparing(each -> !each.serves())
                .thenComparingDouble(Candidate::distance);
        for (Wish wish : order) {
            by = by.thenComparingDouble(each -> step(each, wish));
        }
        return by.thenComparing(each -> each.kind().id());
    }

    /** How many steps a candidate is from the best, in what a wish is about; 0: as good as the best. */
    public double step(Candidate candidate, Wish wish) {
        return switch (wish) {
            case RESERVE -> reserve(candidate);
            case SMALLEST -> times(candidate.kind().ratedM3PerS(), smallest);
            case CHEAPEST -> times(candidate.kind().price(), cheapest);
            case QUIETEST -> loud(candidate);
            case CHEAPEST_TO_RUN -> times(perYear.applyAsDouble(candidate), cheapestToRun);
            case LONGEST_LIVED -> times(longestS, candidate.kind().lifeS());
        };
    }

    /** Rather too loud, or too short on battery, than no room to grow; of each, rather a little than much. */
    private static double reserve(Candidate candidate) {
        if (candidate.fits()) {
            return 0;
        }
        double loud = candidate
                .shortOf(Limit.NOISE)
                .map(by -> steps(by, LEVEL_STEP_DB))
                .orElse(0.0);
        double tight = candidate
                .shortOf(Limit.RESERVE)
                .map(by -> 1 + steps(by, RESERVE_STEP))
                .orElse(0.0);
        double fading = candidate
                .shortOf(Limit.RUNTIME, Limit.Broken::share)
                .map(by -> 1 + steps(by, RESERVE_STEP))
                .orElse(0.0);
        return 1 + loud + fading + FAR * tight;
    }

    /** One louder than the keeper will bear stands behind all that are not; one of which nobody knows the level, last. */
    private double loud(Candidate candidate) {
        if (candidate.dba().isEmpty()) {
            return 2 * LAST;
        }
        double beyond = candidate.shortOf(Limit.NOISE).isPresent() ? LAST : 0;
        return beyond + steps(candidate.dba().getAsDouble() - bestDba, LEVEL_STEP_DB);
    }

    /** What costs nothing stands before all that costs something. */
    private static double times(double figure, double best) {
        if (best <= 0) {
            return figure <= 0 ? 0 : LAST;
        }
        return steps(Math.log(figure / best), Math.log(STEP_FACTOR));
    }

    private static double steps(double beyond, double step) {
        return Math.floor(beyond / step + ROUNDING);
    }
}
