package lungfish.edit;

import java.util.List;
import lungfish.catalogue.BlowerClass.CurvePoint;

/**
 * The point of a curve at which a machine does most for its air: that by which its class is named.
 *
 * @param efficiency least work that compresses so much air (isothermal, from the standard atmosphere) over the watts drawn
 */
record Rated(double gaugePa, double freeM3PerS, double efficiency) {
    private static final int STEPS = 20;

    /** Standard atmosphere, ISO 2533. */
    private static final double ATMOSPHERE_PA = 101_325;

    static Rated of(List<CurvePoint> points) {
        Rated best = at(points.get(0), points.get(0), 0);
        for (int i = 1; i < points.size(); i++) {
            for (int step = 1; step <= STEPS; step++) {
                Rated next = at(points.get(i - 1), points.get(i), (double) step / STEPS);
                best = next.gaugePa() * next.freeM3PerS() > best.gaugePa() * best.freeM3PerS() ? next : best;
            }
        }
        return best;
    }

    private static Rated at(CurvePoint before, CurvePoint after, double share) {
        double pa = before.gaugePa() + share * (after.gaugePa() - before.gaugePa());
        double flow = before.freeM3PerS() + share * (after.freeM3PerS() - before.freeM3PerS());
        double watts = before.watts() + share * (after.watts() - before.watts());
        return new Rated(pa, flow, efficiency(pa, flow, watts));
    }

    /**
     * No machine needs less than the isothermal work p₀ q ln(1 + p/p₀).
     *
     * @param watts drawn, above 0
     */
    static double efficiency(double gaugePa, double freeM3PerS, double watts) {
        return airWatts(gaugePa, freeM3PerS) / watts;
    }

    static double airWatts(double gaugePa, double freeM3PerS) {
        return ATMOSPHERE_PA * freeM3PerS * Math.log1p(gaugePa / ATMOSPHERE_PA);
    }
}
