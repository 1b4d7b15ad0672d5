package lungfish.air;

import java.util.OptionalDouble;

/**
 * One pipe, worked in closed form or as one scalar root. {@link PipeLaw} leaves out the pressure that goes into the
 * faster motion of the thinning gas; {@code withAcceleration} forms add {@code 2 ln(p_up/p_down)} to the bracket (Massey
 * and Ward-Smith, Mechanics of Fluids, § 11.10; Shapiro 1953, ch. 6).
 */
public final class PipeFlow {
    private static final int MOST_STEPS = 200;

    private PipeFlow() {}

    /**
     * Pressure at the far end.
     *
     * @param inletPa absolute
     * @param flowKgPerS 0 or above
     * @return Pa, absolute; empty when the flow is more than the pipe can take at any outlet pressure
     */
    public static OptionalDouble outletPa(Tube tube, Gas gas, double temperatureK, double inletPa, double flowKgPerS) {
        double pi = inletPa * inletPa - PipeLaw.of(tube, gas, temperatureK).piDropPa2(flowKgPerS);
        return pi > 0.0 ? OptionalDouble.of(Math.sqrt(pi)) : OptionalDouble.empty();
    }

    /**
     * Pressure at the near end.
     *
     * @param outletPa absolute
     * @param flowKgPerS 0 or above
     * @return Pa, absolute
     */
    public static double inletPa(Tube tube, Gas gas, double temperatureK, double outletPa, double flowKgPerS) {
        return Math.sqrt(
                outletPa * outletPa + PipeLaw.of(tube, gas, temperatureK).piDropPa2(flowKgPerS));
    }

    /** Mass flow between two absolute pressures, kg/s; negative when the second is higher. */
    public static double flowKgPerS(Tube tube, Gas gas, double temperatureK, double firstPa, double secondPa) {
        return PipeLaw.of(tube, gas, temperatureK).flowKgPerS((firstPa - secondPa) * (firstPa + secondPa));
    }

    /**
     * Mass flow between two absolute pressures with the acceleration counted: with both pressures given it is a further
     * loss of {@code 2 ln(p_up/p_down)}. Below the speed at which the pipe chokes.
     */
    public static double flowWithAccelerationKgPerS(
            Tube tube, Gas gas, double temperatureK, double firstPa, double secondPa) {
        double acceleration = 2.0 * Math.abs(Math.log(firstPa / secondPa));
        return flowKgPerS(tube.plusLoss(acceleration), gas, temperatureK, firstPa, secondPa);
    }

    /**
     * Pressure at the far end with the acceleration counted.
     *
     * @param inletPa absolute
     * @param flowKgPerS 0 or above
     * @return Pa, absolute; empty when the pipe chokes before it passes that flow
     */
    public static OptionalDouble outletWithAccelerationPa(
            Tube tube, Gas gas, double temperatureK, double inletPa, double flowKgPerS) {
        double head = motionPa2(tube, gas, temperatureK, flowKgPerS);
        double available =
                inletPa * inletPa - PipeLaw.of(tube, gas, temperatureK).piDropPa2(flowKgPerS);
        // left over at an outlet of π: available − π − head ln(π1/π), which falls as π rises above the choking value
        double low = head;
        double high = inletPa * inletPa;
        if (available - low - head * Math.log(high / low) < 0.0) {
            return OptionalDouble.empty();
        }
        for (int step = 0; step < MOST_STEPS && high - low > Math.ulp(high); step++) {
            double middle = 0.5 * (low + high);
            boolean tooLow = available - middle - head * Math.log(inletPa * inletPa / middle) > 0.0;
            low = tooLow ? middle : low;
            high = tooLow ? high : middle;
        }
        return OptionalDouble.of(Math.sqrt(high));
    }

    /** {@code ṁ² R T / A²}, Pa²: also the π at which an isothermal flow chokes. */
    private static double motionPa2(Tube tube, Gas gas, double temperatureK, double flowKgPerS) {
        return PipeLaw.unitLossPa2S2PerKg2(tube.boreM(), gas, temperatureK) * flowKgPerS * flowKgPerS;
    }
}
