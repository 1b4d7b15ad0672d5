package lungfish.network;

import java.util.List;
import lungfish.air.Air;

/**
 * The law of many drops, as arrays, from the water up; all in gauge terms so that no digits are lost to the ambient.
 *
 * <p>Behind the device stands the gauge pressure {@code g3 = g0 + α ṁ + β ṁ²} with g0 of water, bubbling and opening
 * pressure. With ψ = p² − p_amb² the airline begins at {@code ψ3 = g3 (g3 + 2 p_amb)}, the airline adds its loss and
 * the valve {@code 2 k R T ṁ²} (its loss at the density of the mean of the pressures before and behind it). A drop is
 * closed while ψ at its tap is at or below {@link #opensAt}.
 */
final class DropLaws {
    private static final int LOG_STEPS = 100;
    private static final int POWERS = 5;

    private final double ambientPa;
    private final double densityKgPerM3;
    private final double twoRT;
    private final boolean logTerm;
    private final Ducts airlines;
    private final double[] restGaugePa;
    private final double[] linear;
    private final double[] square;
    private final double[] valve;
    private final double[] power;

    /** ψ that the tap needs at the last {@link #at}, Pa². */
    double psi;

    /** Its slope at the last {@link #at}, Pa² s/kg. */
    double slope;

    /** How fast the slope grows at the last {@link #at}, Pa² s²/kg²; infinite where that is not known. */
    double bend;

    DropLaws(Conditions conditions, List<Drop> drops, Laws laws) {
        int count = drops.size();
        ambientPa = conditions.ambientPa();
        densityKgPerM3 = conditions.airDensityKgPerM3();
        twoRT = 2.0 * Air.GAS_CONSTANT_J_PER_KG_K * conditions.pipeTemperatureK();
        logTerm = conditions.logTerm();
        airlines = new Ducts(count, laws);
        restGaugePa = new double[count];
        linear = new double[count];
        square = new double[count];
        valve = new double[count];
        power = new double[POWERS * count];
        for (int i = 0; i < count; i++) {
            set(i, drops.get(i), conditions);
        }
    }

    private void set(int i, Drop drop, Conditions conditions) {
        Check check = drop.check().orElse(NO_CHECK);
        Device device = drop.device().orElse(NO_DEVICE);
        restGaugePa[i] = conditions.waterColumnPa(drop.depthM()) + device.p0Pa() + check.openPa();
        linear[i] = (device.aPaSPerM3() + check.slopePaSPerM3()) / densityKgPerM3;
        square[i] = device.bPaS2PerM6() / (densityKgPerM3 * densityKgPerM3);
        setValve(i, drop.valveK());
        if (drop.airline().isPresent()) {
            airlines.set(i, drop.airline().get(), conditions);
        }
    }

    static final Check NO_CHECK = new Check(0.0, 0.0);
    static final Device NO_DEVICE = new Device(0.0, 0.0, 0.0);

    /** Turns one tap valve. */
    void setValve(int i, double valveK) {
        valve[i] = twoRT * valveK;
        multiplyOut(i);
    }

    boolean isShut(int i) {
        return valve[i] >= twoRT * Drop.SHUT_K;
    }

    /** ψ at or below which the drop takes nothing; infinite when its valve is shut. */
    double opensAt(int i) {
        return isShut(i) ? Double.POSITIVE_INFINITY : psiOf(restGaugePa[i]);
    }

    double opensAtGaugePa(int i) {
        return restGaugePa[i];
    }

    private double psiOf(double gaugePa) {
        return gaugePa * (gaugePa + 2.0 * ambientPa);
    }

    /** Whether it would pass any flow at no cost. */
    boolean isFree(int i) {
        return linear[i] == 0.0 && square[i] == 0.0 && valve[i] == 0.0 && leastSlope(i) == 0.0 && leastSquare(i) == 0.0;
    }

    /** ψ that the tap needs for a flow above 0, and its slope. */
    void at(int i, double kgPerS) {
        if (logTerm) {
            behindValve(i, kgPerS);
            psi += valve[i] * kgPerS * kgPerS;
            slope += 2.0 * valve[i] * kgPerS;
            bend = Double.POSITIVE_INFINITY;
            return;
        }
        airlines.at(i, kgPerS);
        int c = POWERS * i;
        double c1 = power[c + 1];
        double c2 = power[c + 2];
        double c3 = power[c + 3];
        double c4 = power[c + 4];
        psi = airlines.loss + power[c] + kgPerS * (c1 + kgPerS * (c2 + kgPerS * (c3 + kgPerS * c4)));
        slope = airlines.slope + c1 + kgPerS * (2.0 * c2 + kgPerS * (3.0 * c3 + kgPerS * 4.0 * c4));
        bend = airlines.bend + 2.0 * c2 + kgPerS * (6.0 * c3 + kgPerS * 12.0 * c4);
    }

    /**
     * The same for a range of them, into arrays: what a solver asks all the time.
     *
     * @param curves takes half of what {@link #bend} says
     */
    void at(int from, int to, double[] flows, double[] psis, double[] slopes, double[] curves) {
        if (logTerm) {
            oneByOne(from, to, flows, psis, slopes, curves);
            return;
        }
        airlines.at(from, to, flows, psis, slopes, curves);
        double[] powers = power;
        int c = POWERS * from;
        for (int i = from; i < to; i++) {
            double flow = flows[i];
            double c1 = powers[c + 1];
            double c2 = powers[c + 2];
            double c3 = powers[c + 3];
            double c4 = powers[c + 4];
            psis[i] += powers[c] + flow * (c1 + flow * (c2 + flow * (c3 + flow * c4)));
            slopes[i] += c1 + flow * (2.0 * c2 + flow * (3.0 * c3 + flow * 4.0 * c4));
            curves[i] += c2 + flow * (3.0 * c3 + flow * 6.0 * c4);
            c += POWERS;
        }
    }

    private void oneByOne(int from, int to, double[] flows, double[] psis, double[] slopes, double[] curves) {
        for (int i = from; i < to; i++) {
            at(i, flows[i]);
            psis[i] = psi;
            slopes[i] = slope;
            curves[i] = 0.5 * bend;
        }
    }

    /** All but the airline is a polynomial of the flow: {@code g3 (g3 + 2 p_amb) + 2 k R T ṁ²}, multiplied out. */
    private void multiplyOut(int i) {
        int c = POWERS * i;
        double above = restGaugePa[i] + ambientPa;
        power[c] = psiOf(restGaugePa[i]);
        power[c + 1] = 2.0 * above * linear[i];
        power[c + 2] = 2.0 * above * square[i] + linear[i] * linear[i] + valve[i];
        power[c + 3] = 2.0 * linear[i] * square[i];
        power[c + 4] = square[i] * square[i];
    }

    private void behindValve(int i, double kgPerS) {
        double behindPa = behindDevicePa(i, kgPerS);
        double behindSlope = 2.0 * (behindPa + ambientPa) * (linear[i] + 2.0 * square[i] * kgPerS);
        airlines.at(i, kgPerS);
        double behind = psiOf(behindPa);
        if (logTerm) {
            accelerate(i, kgPerS, behind + ambientPa * ambientPa);
        }
        psi = behind + airlines.loss;
        slope = behindSlope + airlines.slope;
    }

    private double behindDevicePa(int i, double kgPerS) {
        return restGaugePa[i] + kgPerS * (linear[i] + kgPerS * square[i]);
    }

    /** The acceleration term depends on the loss that it adds to: repeated until it stands. */
    private void accelerate(int i, double kgPerS, double downPi) {
        double plain = airlines.loss;
        double unit = airlines.bracketUnit(i, kgPerS);
        double whole = plain;
        for (int step = 0; step < LOG_STEPS; step++) {
            double next = plain + unit * Math.log1p(whole / downPi);
            boolean stands = next - whole <= Quadratic.LAST_DIGITS * downPi;
            whole = next;
            if (stands) {
                break;
            }
        }
        airlines.addToBracket(i, kgPerS, Math.log1p(whole / downPi));
    }

    /** Least slope of the law at any flow: device and laminar airline. */
    double leastSlope(int i) {
        return 2.0 * (restGaugePa[i] + ambientPa) * linear[i] + airlines.slopeAtRest(i);
    }

    /** A factor of the square of the flow below which the law never bends. */
    double leastSquare(int i) {
        double device = 2.0 * (restGaugePa[i] + ambientPa) * square[i] + linear[i] * linear[i];
        return valve[i] + airlines.square(i) + device;
    }

    /** A flow at or above what the drop takes at ψ, without evaluating its law. */
    double mostFlow(int i, double tapPsi) {
        double opens = opensAt(i);
        return tapPsi <= opens ? 0.0 : Quadratic.positiveRoot(leastSquare(i), leastSlope(i), tapPsi - opens);
    }

    /** The flow that the drop takes at ψ: Newton from above with halving behind it, as in {@link Ducts#flowAt}. */
    double flowAt(int i, double tapPsi) {
        double high = mostFlow(i, tapPsi);
        double low = 0.0;
        double flow = high;
        for (int step = 0; step < Quadratic.MOST_STEPS && high > low; step++) {
            at(i, flow);
            double over = psi - tapPsi;
            if (over > 0.0) {
                high = flow;
            } else {
                low = flow;
            }
            double next = flow - over / slope;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - flow) <= Quadratic.LAST_DIGITS * flow) {
                return next;
            }
            flow = next;
        }
        return flow;
    }

    /** ψ behind the valve at a flow: where the airline begins. */
    double psiBehindValve(int i, double kgPerS) {
        behindValve(i, kgPerS);
        return psi;
    }

    /** The setting that leaves {@code tapPsi} for a flow, 1/m⁴. */
    double valveKFor(int i, double kgPerS, double tapPsi) {
        return (tapPsi - psiBehindValve(i, kgPerS)) / (twoRT * kgPerS * kgPerS);
    }

    /** ψ at the tap that a flow needs with another setting of the valve. */
    double psiWithValve(int i, double kgPerS, double valveK) {
        return psiBehindValve(i, kgPerS) + twoRT * valveK * kgPerS * kgPerS;
    }

    double gaugeOf(double anyPsi) {
        return anyPsi / (Math.sqrt(anyPsi + ambientPa * ambientPa) + ambientPa);
    }
}
