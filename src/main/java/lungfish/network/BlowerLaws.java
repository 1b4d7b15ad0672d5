package lungfish.network;

import java.util.ArrayList;
import java.util.List;

/** What blowers give as a function of ψ = p² − p_amb² at their nodes; fixed pressures give nothing here. */
final class BlowerLaws {
    /** Least slope that a step is given, as a share of flow over ψ: a flat curve alone would fix no pressure. */
    private static final double LEAST_SLOPE = 1e-10;

    /** Below this deep vacuum, where no answer lies but a step may pass, a curve goes straight on. */
    private static final double LEAST_PSI_OVER_PI = -0.9;

    private final double ambientPa;
    private final double densityKgPerM3;
    private final Source.Blower[] blowers;
    private final int[] position;
    private final double[] shutPsi;
    private final double[] slopeAtShut;

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
        shutPsi = new double[blowers.length];
        slopeAtShut = new double[blowers.length];
        for (int i = 0; i < blowers.length; i++) {
            double shutPa = blowers[i].curve().shutGaugePa();
            double machines = blowers[i].count() * densityKgPerM3;
            shutPsi[i] = shutPa * (shutPa + 2.0 * ambientPa);
            slopeAtShut[i] = machines * blowers[i].curve().slopeBeforeShut() / (2.0 * (shutPa + ambientPa));
        }
    }

    int count() {
        return blowers.length;
    }

    /** Position among the sources. */
    int source(int i) {
        return position[i];
    }

    /** Flow and slope at ψ; at the very ψ where it shuts, the slope below it. */
    void at(int i, double psi) {
        double bounded = Math.max(psi, LEAST_PSI_OVER_PI * ambientPa * ambientPa);
        double pressurePa = Math.sqrt(bounded + ambientPa * ambientPa);
        double gaugePa = bounded / (pressurePa + ambientPa);
        double machines = blowers[i].count() * densityKgPerM3;
        slope = machines * blowers[i].curve().slopeAt(gaugePa) / (2.0 * pressurePa);
        flow = machines * blowers[i].curve().flowAt(gaugePa) + slope * (psi - bounded);
        if (psi == shutPsi[i]) {
            flow = 0.0;
            slope = slopeAtShut[i];
        }
    }

    /** Where a step that crosses the kink of a closing check valve is to stop: at the kink, whose slope is that below it. */
    double stoppedAtShut(int i, double beforePsi, double afterPsi) {
        boolean crosses = (beforePsi < shutPsi[i]) != (afterPsi < shutPsi[i]) && beforePsi != shutPsi[i];
        return crosses ? shutPsi[i] : afterPsi;
    }

    /** Slope for a step at the last {@link #at}: never flat while there is flow. */
    double firmSlope() {
        return Math.min(slope, -LEAST_SLOPE * flow / (ambientPa * ambientPa));
    }

    /** ψ at and above which it gives nothing; infinite when its curve never comes down to zero. */
    double shutPsi(int i) {
        return shutPsi[i];
    }
}
