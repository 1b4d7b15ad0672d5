package lungfish.air;

/**
 * Heat and work of compressing air without cooling. The exponent 0.283 is (k − 1)/k with k = 1.395 for air (Metcalf &amp;
 * Eddy, Wastewater Engineering, blower chapter).
 */
public final class Compression {
    /** (k − 1)/k of air. */
    public static final double EXPONENT = 0.283;

    /** Specific heat of air at constant pressure, J/(kg K), near room temperature: any table of air, from memory. */
    public static final double HEAT_CAPACITY_J_PER_KG_K = 1005.0;

    private Compression() {}

    /**
     * Rise of the air's temperature, {@code T1/η ((p2/p1)^0.283 − 1)}.
     *
     * @param efficiency of what stays in the air, above 0 to 1
     * @return K
     */
    public static double riseK(double inletK, double inletPa, double outletPa, double efficiency) {
        return inletK / efficiency * workRatio(inletPa, outletPa);
    }

    /**
     * Rise when every watt of the machine stays in the air, {@code P/(ṁ c_p)}: the hot end, from the energy balance.
     *
     * @return K
     */
    public static double hottestRiseK(double powerW, double flowKgPerS) {
        return powerW / (flowKgPerS * HEAT_CAPACITY_J_PER_KG_K);
    }

    /**
     * Power to compress a flow, {@code p1 V1/0.283 ((p2/p1)^0.283 − 1)/η}.
     *
     * @param inletFlowM3PerS at the inlet's pressure and temperature
     * @param efficiency above 0 to 1
     * @return W
     */
    public static double powerW(double inletPa, double outletPa, double inletFlowM3PerS, double efficiency) {
        return inletPa * inletFlowM3PerS / EXPONENT * workRatio(inletPa, outletPa) / efficiency;
    }

    private static double workRatio(double inletPa, double outletPa) {
        return Math.expm1(EXPONENT * Math.log(outletPa / inletPa));
    }
}
