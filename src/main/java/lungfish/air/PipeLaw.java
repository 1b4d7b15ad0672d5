package lungfish.air;

/**
 * What a length of pipe takes from an isothermal, horizontal flow of an ideal gas, with π the square of the absolute
 * pressure:
 *
 * <pre>π1 − π2 = (f L/D + ΣK) · ṁ|ṁ| · R T / A²</pre>
 *
 * <p>Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, 1953, ch. 6 (isothermal flow, acceleration
 * left out; see {@link PipeFlow} for it). Because Re = 4|ṁ|/(π D µ) is constant along the pipe, friction is
 * {@code (f·Re) · ṁ} times a number of the pipe alone, so the law is finite at rest and linear in slow air:
 *
 * <pre>π1 − π2 = friction · (f·Re) · ṁ + loss · ṁ|ṁ|</pre>
 *
 * <p>A solver may keep these four numbers of each pipe in arrays of its own.
 *
 * @param frictionPa2SPerKg {@code R T / A² · π µ L / 4}, multiplies (f·Re) ṁ
 * @param lossPa2S2PerKg2 {@code R T / A² · ΣK}, multiplies ṁ|ṁ|
 * @param reynoldsSPerKg Reynolds number of a flow of 1 kg/s, {@code 4/(π D µ)}
 * @param relativeRoughness ε/D
 */
public record PipeLaw(
        double frictionPa2SPerKg, double lossPa2S2PerKg2, double reynoldsSPerKg, double relativeRoughness) {

    private static final int MOST_STEPS = 200;

    /** The law of a tube carrying a gas at a temperature. */
    public static PipeLaw of(Tube tube, Gas gas, double temperatureK) {
        double perMassSquared = unitLossPa2S2PerKg2(tube.boreM(), gas, temperatureK);
        return new PipeLaw(
                perMassSquared * Math.PI / 4.0 * gas.viscosityPaS() * tube.lengthM(),
                perMassSquared * tube.lossSum(),
                4.0 / (Math.PI * tube.boreM() * gas.viscosityPaS()),
                tube.relativeRoughness());
    }

    /** {@code R T / A²}: what one unit of the law's bracket takes of 1 kg/s, Pa². */
    public static double unitLossPa2S2PerKg2(double boreM, Gas gas, double temperatureK) {
        double area = Tube.areaM2(boreM);
        return gas.gasConstantJPerKgK() * temperatureK / (area * area);
    }

    /** Reynolds number of a flow in either direction. */
    public double reynolds(double flowKgPerS) {
        return Math.abs(flowKgPerS) * reynoldsSPerKg;
    }

    /**
     * Fall of π along the pipe.
     *
     * @param flowKgPerS positive from end 1 to end 2
     * @return π1 − π2, Pa², of the sign of the flow
     */
    public double piDropPa2(double flowKgPerS) {
        double friction = frictionPa2SPerKg * Friction.darcyTimesRe(reynolds(flowKgPerS), relativeRoughness);
        return (friction + lossPa2S2PerKg2 * Math.abs(flowKgPerS)) * flowKgPerS;
    }

    /**
     * The flow that a fall of π drives: the one root of the monotone law, by Newton steps kept inside a bracket that
     * only shrinks.
     *
     * @param piDropPa2 π1 − π2, of either sign
     * @return kg/s, of the same sign; infinite through a pipe that neither rubs nor has a fitting
     */
    public double flowKgPerS(double piDropPa2) {
        return Math.copySign(flowOfPositiveDrop(Math.abs(piDropPa2)), piDropPa2);
    }

    private double flowOfPositiveDrop(double drop) {
        double low = 0.0;
        double high = mostFlow(drop);
        if (drop == 0.0 || Double.isInfinite(high)) {
            return drop == 0.0 ? 0.0 : high;
        }
        double flow = high;
        double[] product = new double[2];
        for (int step = 0; step < MOST_STEPS; step++) {
            Friction.darcyTimesRe(reynolds(flow), relativeRoughness, product);
            double excess = (frictionPa2SPerKg * product[0] + lossPa2S2PerKg2 * flow) * flow - drop;
            low = excess < 0.0 ? flow : low;
            high = excess < 0.0 ? high : flow;
            double newton = flow - excess / slope(flow, product);
            double next = newton >= low && newton <= high ? newton : 0.5 * (low + high);
            if (Math.abs(next - flow) <= Math.ulp(flow)) {
                return next;
            }
            flow = next;
        }
        return flow;
    }

    /** No flow is greater than the laminar one without fittings, nor than the one that fittings alone let through. */
    private double mostFlow(double drop) {
        return Math.min(
                drop / (Friction.LAMINAR_DARCY_TIMES_RE * frictionPa2SPerKg), Math.sqrt(drop / lossPa2S2PerKg2));
    }

    private double slope(double flow, double[] product) {
        double rising = product[0] + reynolds(flow) * product[1];
        return frictionPa2SPerKg * rising + 2.0 * lossPa2S2PerKg2 * flow;
    }
}
