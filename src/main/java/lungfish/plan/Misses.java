package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import lungfish.blower.Wear;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;

/** Every limit and wish that a candidate misses in a room, be it known to the bench or not. */
final class Misses {
    /** Figures that were found by halving or by a solver agree to this share. */
    static final double ROUNDING = 1e-6;

    private Misses() {}

    static List<Limit.Broken> of(Basis basis, Candidate candidate) {
        List<Limit.Broken> missed = new ArrayList<>(candidate.broken());
        if (candidate.reserveShare() >= 0) {
            addShares(basis.needed(), candidate, missed);
            addSpare(basis, candidate, missed);
        }
        AirSpeed speed = basis.speed();
        if (speed.isFast()) {
            missed.add(Limit.SPEED.broken(speed.metresPerS(), AirSpeed.FAST_M_PER_S));
        }
        return missed;
    }

    /** Together they give enough: the first place that does not give what the pipe draws there. */
    private static void addShares(Needed needed, Candidate candidate, List<Limit.Broken> missed) {
        for (int i = 0; i < candidate.fleet().placed().size(); i++) {
            double gives = candidate.fleet().freeAt(i, needed.pressurePa(), Wear.TIRED);
            double drawn = needed.tuned().source(i).askedM3PerS();
            if (gives < drawn * (1 - ROUNDING)) {
                missed.add(Limit.FLOW.broken(gives, drawn));
                return;
            }
        }
    }

    /** Where it runs, tired, there should be this much more than the index outlet needs. */
    private static void addSpare(Basis basis, Candidate candidate, List<Limit.Broken> missed) {
        double wishedPa = basis.asked().sparePa();
        double sparePa = candidate.tired().gaugePa() - basis.needed().pressurePa();
        if (sparePa < wishedPa * (1 - ROUNDING) - ROUNDING) {
            missed.add(Limit.SPARE.broken(Math.max(0, sparePa), wishedPa));
        }
    }
}
