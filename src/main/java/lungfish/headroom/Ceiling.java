package lungfish.headroom;

import java.util.Optional;
import java.util.function.Function;
import lungfish.blower.Wear;
import lungfish.sizing.Asked;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Running;
import lungfish.sizing.Runs;

/** Says which limit a demand breaks first: the tired fleet's air and pressure, its rating and the heat when new, and more. */
final class Ceiling {
    private final Fleet fleet;
    private final Asked asked;
    private final Function<Running, Optional<Limit.Broken>> further;

    /**
     * Over a fleet.
     *
     * @param further limits beyond flow, pressure, rating and heat, judged where the tired machine runs
     */
    Ceiling(Fleet fleet, Asked asked, Function<Running, Optional<Limit.Broken>> further) {
        this.fleet = fleet;
        this.asked = asked;
        this.further = further;
    }

    /** The first limit that is broken by so much air at such a pressure. */
    Optional<Limit.Broken> broken(double pressurePa, double freeM3PerS) {
        double gives = fleet.freeAt(pressurePa, Wear.TIRED);
        if (fleet.shutPa(Wear.TIRED) <= pressurePa) {
            return Optional.of(Limit.PRESSURE.broken(fleet.shutPa(Wear.TIRED), pressurePa));
        }
        if (gives < freeM3PerS) {
            return Optional.of(Limit.FLOW.broken(gives, freeM3PerS));
        }
        Runs runs = new Runs(pressurePa, freeM3PerS, asked.sparePa());
        Running fresh = runs.of(fleet, Wear.NEW);
        return fleet.overRating(Math.max(pressurePa, fresh.gaugePa()), Wear.NEW)
                .or(() -> tooHot(fresh))
                .or(() -> further.apply(runs.of(fleet, Wear.TIRED)));
    }

    private Optional<Limit.Broken> tooHot(Running fresh) {
        double airK = fresh.discharge().coolK();
        return airK > asked.warmestPipeK()
                ? Optional.of(Limit.HEAT.broken(airK, asked.warmestPipeK()))
                : Optional.empty();
    }
}
