package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.blower.Wear;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
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
            Needed needed = basis.needed();
            shares(needed, candidate.fleet()).stream()
                    .flatMap(Optional::stream)
                    .limit(1)
                    .forEach(missed::add);
            spare(needed, candidate, basis.asked().sparePa()).ifPresent(missed::add);
        }
        AirSpeed speed = basis.speed();
        if (speed.isFast()) {
            missed.add(Limit.SPEED.broken(speed.metresPerS(), AirSpeed.FAST_M_PER_S));
        }
        return missed;
    }

    /** Together they give enough: each place that does not give what the pipe draws there; none in its place in the list. */
    static List<Optional<Limit.Broken>> shares(Needed needed, Fleet fleet) {
        return IntStream.range(0, fleet.placed().size())
                .mapToObj(place -> share(needed, fleet, place))
                .toList();
    }

    private static Optional<Limit.Broken> share(Needed needed, Fleet fleet, int place) {
        double gives = fleet.freeAt(place, needed.pressurePa(), Wear.TIRED);
        double drawn = needed.tuned().source(place).askedM3PerS();
        return gives < drawn * (1 - ROUNDING) ? Optional.of(Limit.FLOW.broken(gives, drawn)) : Optional.empty();
    }

    /** Where it runs, tired, there should be this much more than the index outlet needs. */
    static Optional<Limit.Broken> spare(Needed needed, Candidate candidate, double wishedPa) {
        double sparePa = candidate.tired().gaugePa() - needed.pressurePa();
        return sparePa < wishedPa * (1 - ROUNDING) - ROUNDING
                ? Optional.of(Limit.SPARE.broken(Math.max(0, sparePa), wishedPa))
                : Optional.empty();
    }
}
