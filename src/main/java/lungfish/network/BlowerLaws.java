package lungfish.network;

import java.util.ArrayList;
import java.util.List;

/** What blowers give as a function of ψ = p² − p_amb² at their nodes; fixed pressures give nothing here. */
final class BlowerLaws {
    /** Least slope that a step is given, as a share of flow over ψ: a flat curve alone would fix no pressure. */
    private static final double LEAST_SLOPE = 1e-4;

    private final double ambientPa;
    private final double densityKgPerM3;
    private final Source.Blower[] blowers;
    private final int[] position;

    /** Flow at the last {@link #at}, kg/s. */
    double flow;

    /** Its slope at the last {@link #at}, kg/(s Pa²); 0 or less. */
    double slope;

    BlowerLaws(Conditions conditions, List<Source> sources) {
        ambientPa = conditions.ambientPa();
        densityKgPerM3 = conditions.airDensityKgPerM3();
        position = new int[sources.size()];
        List<Source.Blower> found = new ArrayList<>();
        for (int i = 0; i < position.length; i++) {
            if (sources.get(i) instanceof Source.Blower blower) {
                position[found.size()] = i;
                found.add(blower);
            }
        }
        blowers = found.toArray(Source.Blower[]::new);
    }

    int count() {
        return blowers.length;
    }

    /** Position among the sources. */
    int source(int i) {
        return position[i];
    }

    void at(int i, double psi) {
        double pressurePa = Math.sqrt(Math.max(0.0, psi + ambientPa * ambientPa));
        double gaugePa = psi / (pressurePa + ambientPa);
        double machines = blowers[i].count() * densityKgPerM3;
        flow = machines * blowers[i].curve().flowAt(gaugePa);
        slope = machines * blowers[i].curve().slopeAt(gaugePa) / (2.0 * Math.max(pressurePa, 1.0));
    }

    /** Slope for a step at the last {@link #at}: never flat while there is flow. */
    double firmSlope() {
        return Math.min(slope, -LEAST_SLOPE * flow / (ambientPa * ambientPa));
    }

    /** ψ at and above which it gives nothing; infinite when its curve never comes down to zero. */
    double shutPsi(int i) {
        double gaugePa = blowers[i].curve().shutGaugePa();
        return gaugePa * (gaugePa + 2.0 * ambientPa);
    }
}
