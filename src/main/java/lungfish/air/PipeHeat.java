package lungfish.air;

import java.util.OptionalDouble;

/** What warm air leaves of the strength of rigid PVC pipe. */
public final class PipeHeat {
    /** Warmest air for PVC, K: 140 °F, above which no table gives a rating. */
    public static final double PVC_LIMIT_K = Air.ZERO_CELSIUS_K + 60.0;

    /** Pressure de-rating of PVC of cell class 12454 (ASTM D1785 material), as published by several pipe makers. */
    private static final double[][] PVC_FAHRENHEIT_FACTOR = {
        {73.0, 1.00},
        {80.0, 0.88},
        {90.0, 0.75},
        {100.0, 0.62},
        {110.0, 0.50},
        {120.0, 0.40},
        {130.0, 0.30},
        {140.0, 0.22}
    };

    private PipeHeat() {}

    /**
     * Share of the rated pressure that PVC keeps, straight between the table's points.
     *
     * @param temperatureK of the air in the pipe
     * @return 1 up to 73 °F, 0.22 at 140 °F; empty above it
     */
    public static OptionalDouble pvcFactor(double temperatureK) {
        double fahrenheit = (temperatureK - Air.ZERO_CELSIUS_K) * 1.8 + 32.0;
        double[] before = PVC_FAHRENHEIT_FACTOR[0];
        if (fahrenheit <= before[0]) {
            return OptionalDouble.of(before[1]);
        }
        for (double[] point : PVC_FAHRENHEIT_FACTOR) {
            if (fahrenheit <= point[0]) {
                double part = (fahrenheit - before[0]) / (point[0] - before[0]);
                return OptionalDouble.of(before[1] + part * (point[1] - before[1]));
            }
            before = point;
        }
        return OptionalDouble.empty();
    }
}
