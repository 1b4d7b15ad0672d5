package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FrictionTest {
    /** What Churchill's blend adds to 64/Re at Re 2000, from the equation: X = Re^36/37530^24 /8^12 /12. */
    private static final double CHURCHILL_BELOW_RE_2000_PERCENT = 0.2;

    /** Smooth tube and drawn pipe, ε/D up to 0.001: the equations' own distance, greatest at Re 4000. */
    private static final double CHURCHILL_AGAINST_COLEBROOK_PERCENT = 2.0;

    /** Rough walls, ε/D up to 0.05: Churchill's blend lies up to 3.15 % above Colebrook near Re 4300, ε/D 0.017. */
    private static final double CHURCHILL_AGAINST_COLEBROOK_ROUGH_PERCENT = 3.2;

    private static final double CENTRAL_DIFFERENCE_RELATIVE = 1e-6;

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # Hagen–Poiseuille, 64 / Re, by hand
        1, 64
        500, 0.128
        1000, 0.064
        2000, 0.032""")
    void slowAirFollowsHagenPoiseuille(double re, double darcy) {
        assertThat(Friction.darcy(re, 0.0)).isCloseTo(darcy, withinPercentage(CHURCHILL_BELOW_RE_2000_PERCENT));
    }

    @Test
    void theProductWithReynoldsStaysFiniteAtRest() {
        assertThat(Friction.darcyTimesRe(0.0, 0.01)).isEqualTo(64.0);
    }

    @Property
    void fastAirInPlasticPipeAgreesWithColebrook(
            @ForAll @DoubleRange(min = 4.0e3, max = 1.0e6) double re,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double roughnessPerMille) {
        double relative = roughnessPerMille / 1000.0;
        assertThat(Friction.darcy(re, relative))
                .isCloseTo(colebrook(re, relative), withinPercentage(CHURCHILL_AGAINST_COLEBROOK_PERCENT));
    }

    @Property
    void fastAirInRoughPipeStaysNearColebrook(
            @ForAll @DoubleRange(min = 4.0e3, max = 1.0e6) double re,
            @ForAll @DoubleRange(min = 1.0, max = 50.0) double roughnessPerMille) {
        double relative = roughnessPerMille / 1000.0;
        assertThat(Friction.darcy(re, relative))
                .isCloseTo(colebrook(re, relative), withinPercentage(CHURCHILL_AGAINST_COLEBROOK_ROUGH_PERCENT));
    }

    @Property
    void theProductIsChurchillsEquationAsPrinted(
            @ForAll @DoubleRange(min = 1.0, max = 1.0e6) double re,
            @ForAll @DoubleRange(min = 0.0, max = 50.0) double roughnessPerMille) {
        double relative = roughnessPerMille / 1000.0;
        double a = Math.pow(2.457 * Math.log(1.0 / (Math.pow(7.0 / re, 0.9) + 0.27 * relative)), 16.0);
        double b = Math.pow(37530.0 / re, 16.0);
        double printed = 8.0 * Math.pow(Math.pow(8.0 / re, 12.0) + Math.pow(a + b, -1.5), 1.0 / 12.0);
        assertThat(Friction.darcy(re, relative)).isCloseTo(printed, withinPercentage(1e-11));
    }

    @Property
    void theSlopeIsTheDerivative(
            @ForAll @DoubleRange(min = 1.0, max = 1.0e5) double re,
            @ForAll @DoubleRange(min = 0.0, max = 50.0) double roughnessPerMille) {
        double relative = roughnessPerMille / 1000.0;
        double[] at = new double[2];
        Friction.darcyTimesRe(re, relative, at);
        double step = 1e-5 * re;
        double difference = (Friction.darcyTimesRe(re + step, relative) - Friction.darcyTimesRe(re - step, relative))
                / (2.0 * step);
        assertThat(at[0]).isCloseTo(Friction.darcyTimesRe(re, relative), withinPercentage(1e-12));
        assertThat(at[1]).isCloseTo(difference, within(CENTRAL_DIFFERENCE_RELATIVE * (at[0] / re + at[1])));
    }

    @Property
    void moreFlowNeedsMorePressureInEveryRegime(
            @ForAll @DoubleRange(min = 1.0, max = 1.0e5) double re,
            @ForAll @DoubleRange(min = 1.0, max = 100.0) double morePercent,
            @ForAll @DoubleRange(min = 0.0, max = 50.0) double roughnessPerMille) {
        double more = re * (1.0 + morePercent / 100.0);
        double relative = roughnessPerMille / 1000.0;
        assertThat(Friction.darcyTimesRe(more, relative) * more)
                .isGreaterThan(Friction.darcyTimesRe(re, relative) * re);
    }

    /** Colebrook 1939, 1/√f = −2 lg(ε/3.7 + 2.51/(Re √f)), by fixed point on 1/√f, which contracts. */
    private static double colebrook(double re, double relativeRoughness) {
        double inverseRoot = 8.0;
        for (int i = 0; i < 100; i++) {
            inverseRoot = -2.0 * Math.log10(relativeRoughness / 3.7 + 2.51 * inverseRoot / re);
        }
        return 1.0 / (inverseRoot * inverseRoot);
    }
}
