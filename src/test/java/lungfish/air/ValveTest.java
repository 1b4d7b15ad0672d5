package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

final class ValveTest {
    private static final double ROUNDING_PERCENT = 1e-9;
    private static final List<ValveCurve> CURVES = List.of(
            ValveCurve.BALL, ValveCurve.LINEAR, ValveCurve.equalPercentage(50.0), ValveCurve.equalPercentage(5.0));

    private static final double HAND_CALCULATION_PERCENT = 0.5;

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # Munson, Young and Okiishi, Table 8.2: open, 1/3 closed, 2/3 closed
        1.0, 0.05
        0.6666666666666667, 5.5
        0.3333333333333333, 210""")
    void aBallValvePassesThroughItsPublishedPoints(double opening, double lossFactor) {
        assertThat(0.05 * ValveCurve.BALL.lossRatio(opening)).isCloseTo(lossFactor, withinPercentage(ROUNDING_PERCENT));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # by hand: flow coefficient h, and 50^(h-1), of the open one; loss is its inverse square
        0, 0.5, 4
        0, 0.1, 100
        50, 0.5, 50
        50, 0.75, 7.071
        30, 0.5, 30""")
    void aNeedleValveFollowsItsCharacteristic(double rangeability, double opening, double ratio) {
        ValveCurve curve = rangeability == 0.0 ? ValveCurve.LINEAR : ValveCurve.equalPercentage(rangeability);
        assertThat(curve.lossRatio(opening)).isCloseTo(ratio, withinPercentage(HAND_CALCULATION_PERCENT));
    }

    static List<ValveCurve> everyCurve() {
        return CURVES;
    }

    @Provide
    Arbitrary<ValveCurve> curves() {
        return Arbitraries.of(CURVES);
    }

    @ParameterizedTest
    @MethodSource("everyCurve")
    void openIsOneAndShutIsInfinite(ValveCurve curve) {
        assertThat(curve.lossRatio(1.0)).isEqualTo(1.0);
        assertThat(curve.lossRatio(0.0)).isInfinite();
        assertThat(curve.lossRatio(0.001)).isFinite();
        assertThat(curve.opening(0.5)).isEqualTo(1.0);
        assertThat(curve.opening(Double.POSITIVE_INFINITY)).isZero();
    }

    @Property
    void openingAndLossAreEachOthersInverse(
            @ForAll("curves") ValveCurve curve, @ForAll @DoubleRange(min = 0.001, max = 1.0) @Scale(4) double opening) {
        assertThat(curve.opening(curve.lossRatio(opening))).isCloseTo(opening, offset(1e-9));
    }

    @Property
    void openingWiderAlwaysTakesLess(
            @ForAll("curves") ValveCurve curve,
            @ForAll @DoubleRange(min = 0.001, max = 0.99) @Scale(4) double opening,
            @ForAll @DoubleRange(min = 0.001, max = 0.01) @Scale(4) double more) {
        assertThat(curve.lossRatio(opening + more)).isLessThan(curve.lossRatio(opening));
    }

    @Test
    void noCurveHasACornerWhereItsPartsMeet() {
        assertNoCorner(ValveCurve.BALL, 1.0 / 3.0);
        assertNoCorner(ValveCurve.equalPercentage(50.0), 1.0 / Math.log(50.0));
    }

    @Test
    void aNeedleOfHardlyAnyRangeIsStraight() {
        assertThat(ValveCurve.equalPercentage(2.0)).isEqualTo(ValveCurve.LINEAR);
    }

    private static void assertNoCorner(ValveCurve curve, double meeting) {
        double step = 1e-5;
        double middle = Math.log(curve.lossRatio(meeting));
        double below = (middle - Math.log(curve.lossRatio(meeting - step))) / step;
        double above = (Math.log(curve.lossRatio(meeting + step)) - middle) / step;
        assertThat(above).isCloseTo(below, withinPercentage(0.05));
    }

    @Test
    void theCoefficientOfALossFactorIsKOverTwoAreasSquared() {
        // by hand: K 10 on 4 mm, A = 1.25664e-5 m², k = 10/(2·1.57914e-10) = 3.1663e10
        assertThat(Valve.k(10.0, 0.004)).isCloseTo(3.1663e10, withinPercentage(HAND_CALCULATION_PERCENT));
    }

    @Test
    void aFallOfPressureAtAFlowTellsTheCoefficient() {
        // by hand: 1000 Pa above 101325 at 2e-5 kg/s and 293.15 K: 1000·203650/(2·84148.7·4e-10) = 3.0251e12
        assertThat(Valve.kTaking(102325.0, 101325.0, 2e-5, 293.15))
                .isCloseTo(3.0251e12, withinPercentage(HAND_CALCULATION_PERCENT));
        assertThat(Valve.kTaking(102325.0, 101325.0, 0.0, 293.15)).isInfinite();
    }

    @Property
    void aWantedCoefficientGivesAnOpeningThatHasIt(
            @ForAll("curves") ValveCurve curve, @ForAll @DoubleRange(min = 1.0, max = 1.0e6) double times) {
        Valve valve = new Valve(curve, 10.0, 0.004);
        double wanted = valve.openK() * times;
        assertThat(valve.kAt(valve.openingFor(wanted))).isCloseTo(wanted, withinPercentage(ROUNDING_PERCENT));
    }
}
