package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;
import lungfish.sizing.Trial;

/**
 * What a blower does with the air that nobody takes: whether the valves, as they are set, hold it above what it bears all day,
 * tired, new, or with those shut that run only sometimes; and whether it is far too big.
 */
final class SurplusFindings {
    /** A blower that keeps more than this share beyond the need is far too big: common practice, no source. */
    private static final double FAR_TOO_BIG_SHARE = 3;

    /** Filter and silencer may take this much of what a machine bears, so that its outlet stands lower. */
    private static final double NEAR = 0.9;

    private final AirSide air;
    private final boolean keepPumps;
    private final List<Finding> findings = new ArrayList<>();

    private SurplusFindings(AirSide air, boolean keepPumps) {
        this.air = air;
        this.keepPumps = keepPumps;
    }

    static List<Finding> of(AirSide air, boolean keepPumps) {
        SurplusFindings own = new SurplusFindings(air, keepPumps);
        own.held();
        own.farTooBig();
        return own.findings;
    }

    /** A rating that tuned valves break already is told by the duty; pumps that stay leave the blower unbought. */
    private void held() {
        boolean isTold = air.duty().candidate().broken().stream().anyMatch(broken -> broken.limit() == Limit.RATING);
        if (!isTold && !keepPumps) {
            tooHigh("tired", air.filed())
                    .or(() -> trial(false).flatMap(set -> tooHigh("new", set)))
                    .or(() ->
                            trial(true).flatMap(set -> tooHigh("new and with those shut that run only sometimes", set)))
                    .ifPresent(findings::add);
        }
    }

    /**
     * Whether new machines could be held that high at all: whoever stays open takes no less at a higher pressure than now, and
     * so does the bleed, so that the pressure ends where the curve gives what they take now, or below. Else nothing is solved.
     */
    private boolean couldBeTooHigh(boolean sometimesShut) {
        List<Need> needs = air.piped().needs();
        double shut = IntStream.range(0, needs.size())
                .filter(i -> sometimesShut && needs.get(i).seat().outlet().isSometimes())
                .mapToDouble(i -> air.filed().drop(i).freeM3PerS())
                .sum();
        double stays = air.filed().totalFreeM3PerS() - shut;
        return air.fleet().freeAt(NEAR * air.fleet().continuousPa(), Wear.NEW) > stays;
    }

    /** The machines new, their bleeds set by the gauge; every valve as filed. */
    private Optional<AsSet> trial(boolean sometimesShut) {
        if (!couldBeTooHigh(sometimesShut)) {
            return Optional.empty();
        }
        List<Need> needs = air.piped().needs();
        List<Drop> drops = air.piped().network().drops();
        double[] valveK = IntStream.range(0, drops.size())
                .mapToDouble(i -> sometimesShut && needs.get(i).seat().outlet().isSometimes()
                        ? Drop.SHUT_K
                        : drops.get(i).valveK())
                .toArray();
        Candidate candidate = air.duty().candidate();
        return new Trial(air.piped(), air.fleet(), air.duty().needed().tuned(), candidate.fresh())
                .asSet(Wear.NEW, Upkeep.DUE, valveK)
                .match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    private Optional<Finding> tooHigh(String when, AsSet set) {
        int at = hardest(set);
        Machine machine = machine(at);
        return share(at, set) > 1
                ? Optional.of(Finding.of(
                                Code.HELD_TOO_HIGH,
                                machine.part(),
                                new Amount("found", air.fleet().insidePa(at, set), Dimension.PRESSURE),
                                new Amount("allowed", machine.kind().continuousPa(), Dimension.PRESSURE))
                        .with("blower", machine.name())
                        .with("when", when))
                : Optional.empty();
    }

    private int hardest(AsSet set) {
        return IntStream.range(0, air.fleet().placed().size())
                .boxed()
                .max(Comparator.comparingDouble(i -> share(i, set)))
                .orElse(0);
    }

    private Machine machine(int place) {
        return air.fleet().placed().get(place).machine();
    }

    private double share(int place, AsSet set) {
        return air.fleet().insidePa(place, set) / machine(place).kind().continuousPa();
    }

    private void farTooBig() {
        Candidate candidate = air.duty().candidate();
        boolean isMeant = !(air.duty().recommended() && keepPumps);
        if (candidate.reserveShare() > FAR_TOO_BIG_SHARE && isMeant) {
            double needed = air.duty().needed().freeM3PerS();
            findings.add(Finding.of(
                            Code.FAR_TOO_BIG,
                            air.fleet().placed().get(0).machine().part(),
                            new Amount("found", (1 + candidate.reserveShare()) * needed, Dimension.AIR_FLOW),
                            new Amount("allowed", needed, Dimension.AIR_FLOW))
                    .with("blower", air.fleet().name())
                    .with("instead", instead(candidate)));
        }
    }

    /** The smallest class that fits, where that is a smaller one; among equals the first of the ranking. */
    private String instead(Candidate tooBig) {
        return air.candidates().stream()
                .filter(Candidate::fits)
                .filter(each -> each.kind().ratedM3PerS() < tooBig.kind().ratedM3PerS())
                .min(Comparator.comparingDouble(each -> each.kind().ratedM3PerS()))
                .map(each -> "a smaller class fits: " + each.kind().name())
                .orElse("no smaller class fits, so bleed what is left over");
    }
}
