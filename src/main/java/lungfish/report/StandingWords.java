package lungfish.report;

import java.util.List;
import java.util.Optional;
import lungfish.drawing.StandingPicture;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.standing.Common;
import lungfish.standing.Loss;
import lungfish.standing.Standing;
import lungfish.standing.StandingAnswer;
import lungfish.standing.Way;

/** Says how the ways to give air stand up to failures. */
public final class StandingWords {
    /** What must stand beside every figure of it. */
    public static final String CAUTION =
            "How often blowers fail nobody has published: compare the ways with each other, and do not trust the hours."
                    + " Estimates to plan by: watch the fish.";

    private static final double MINUTE_S = 60;

    private final Quantities quantities;
    private final StandingAnswer answer;

    public StandingWords(StandingAnswer answer, Quantities quantities) {
        this.answer = answer;
        this.quantities = quantities;
    }

    /** The way as a row's heading: "One blower". */
    public static String name(Standing standing) {
        return switch (standing.way()) {
            case ONE_BLOWER -> "One blower";
            case STANDBY_BY_HAND -> running(standing) + " and standby, by hand";
            case STANDBY_BY_ITSELF -> running(standing) + " and standby, by itself";
            case SHARED -> standing.machines() == 2 ? "Two halves" : standing.machines() + " blowers that share";
            case SMALL_PUMPS -> standing.drawn() ? "The small pumps of today" : "A small pump for each tank";
        };
    }

    private static String running(Standing standing) {
        int running = standing.machines() - 1;
        return running == 1 ? "Blower" : running + " blowers";
    }

    /** Whether the room has it so, in a word; nothing where it is only thought of. */
    public static Optional<String> state(Standing standing) {
        if (!standing.drawn()) {
            return Optional.empty();
        }
        return Optional.of(standing.way() == Way.SMALL_PUMPS ? "as they are" : "planned");
    }

    /** The ways that the room has. */
    public List<Standing> drawn() {
        return answer.ways().stream().filter(Standing::drawn).toList();
    }

    /** What the way of the room means, in a sentence; where it has none yet, of one blower. */
    public String headline() {
        Standing its = drawn().stream().findFirst().orElse(answer.of(Way.ONE_BLOWER));
        return name(its) + (its.drawn() ? ", " + state(its).orElse("") : "") + ": a tank is without air about "
                + time(its.allAirlessSPerYear()) + " a year: " + time(its.airlessSPerYear())
                + " by machines that fail and " + time(its.mainsSPerYear()) + " by the mains.";
    }

    /** How far apart failures of any machine lie. */
    public String every(Standing standing) {
        return time(365 * 24 * 3600 / standing.failuresPerYear());
    }

    /** What one failure takes: "all 40 tanks for 80 h". */
    public String loss(Standing standing) {
        Loss loss = standing.loss();
        if (loss.tanks() > 0) {
            return some(loss.tanks()) + " for " + time(loss.forS());
        }
        if (loss.less() > 0) {
            return "none; " + some(loss.less()) + " keep " + quantities.show(loss.leftShare(), Dimension.SHARE)
                    + " for " + time(loss.forS());
        }
        return "none; back after " + time(loss.forS());
    }

    /** So many of the tanks: "all 40 tanks", "2 of 40 tanks". */
    public String some(int tanks) {
        if (tanks < answer.tanks() || tanks == 0) {
            return tanks + " of " + answer.tanks() + " tanks";
        }
        return switch (tanks) {
            case 1 -> "the one tank";
            case 2 -> "both tanks";
            default -> "all " + tanks + " tanks";
        };
    }

    /** What takes several machines at once, a sentence each. */
    public List<String> common() {
        Standing central = drawn().stream()
                .filter(each -> each.way() != Way.SMALL_PUMPS)
                .findFirst()
                .orElse(answer.of(Way.ONE_BLOWER));
        Standing pumps = answer.of(Way.SMALL_PUMPS);
        return List.of(mains(central), pipe(central), circuit(central, pumps));
    }

    private String mains(Standing central) {
        double leftS = central.mainsSPerYear();
        boolean carried = leftS < answer.rates().mainsPerYear() * answer.rates().mainsS();
        return "The mains take " + some(central.tanks(Common.Cause.MAINS)) + " at once: "
                + quantities.show(answer.rates().mainsPerYear(), Dimension.COUNT) + " times a year for "
                + time(answer.rates().mainsS()) + " each. "
                + (carried
                        ? "What keeps the air on then leaves " + time(leftS) + " a year."
                        : "Nothing keeps the air on then.")
                + " A second blower does not help.";
    }

    private String pipe(Standing central) {
        return "The one pipe takes " + some(central.tanks(Common.Cause.PIPE))
                + " where it breaks or comes apart, whatever feeds it; small pumps share none.";
    }

    private String circuit(Standing central, Standing pumps) {
        int by = central.tanks(Common.Cause.CIRCUIT);
        String blower = by == 0
                ? "One circuit, one plug strip: the standby hangs on its own, so none takes the air."
                : "One circuit, one plug strip takes " + some(by) + " of a blower"
                        + (central.machines() > 1
                                ? ", as long as nothing is said of a circuit of its own for the second one."
                                : ".");
        return blower + " Of small pumps it takes " + some(pumps.tanks(Common.Cause.CIRCUIT)) + " at the most.";
    }

    /** The rows of the picture. */
    public List<StandingPicture.Row> rows() {
        return answer.ways().stream().map(this::row).toList();
    }

    private StandingPicture.Row row(Standing standing) {
        return new StandingPicture.Row(
                name(standing) + state(standing).map(its -> " (" + its + ")").orElse(""),
                time(standing.allAirlessSPerYear()) + " a year",
                standing.airlessSPerYear(),
                standing.mainsSPerYear(),
                standing.loss().tanks(),
                standing.loss().less(),
                answer.tanks(),
                loss(standing));
    }

    /** What the figures rest on. */
    public String taken() {
        return "Without air: with less than half of it. Taken: a machine fails every "
                + time(answer.rates().mtbfS()) + " of running; no air is noticed after "
                + time(answer.rates().noticeS()) + ", less air after "
                + time(answer.rates().quietNoticeS()) + "; a machine is replaced "
                + time(answer.rates().mendS())
                + " later; a standby is run once a month, so that it does not lie dead unseen.";
    }

    /** A time in the reader's units; nobody knows these to the second. */
    public String time(double s) {
        return s > 0 && s < MINUTE_S ? "under 1 min" : quantities.show(s, Dimension.DURATION);
    }
}
