package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The laws of chance, against a general library of statistics and by hand. */
final class ChanceTest {
    private static final double SEVEN_FIGURES = 5e-7;
    private static final double ROUNDING = 1e-9;
    private static final double RARELY = 0.01;
    private static final int SAMPLES = 2000;

    /** From the cut at four standard deviations to the other: beyond lie 3.2 of 100 000 on each side. */
    @ParameterizedTest
    @ValueSource(doubles = {3.2e-5, 1e-4, 0.001, 0.02, 0.075, 0.1, 0.3, 0.5, 0.62, 0.9, 0.95, 0.999, 0.9999})
    void aDeviateIsThatOfTheLibrary(double share) {
        assertThat(Chance.deviate(share))
                .isCloseTo(new NormalDistribution(0, 1).inverseCumulativeProbability(share), within(SEVEN_FIGURES));
    }

    @ParameterizedTest
    @CsvSource({"0, -4", "1e-9, -4", "1, 4"})
    void noDeviateIsBeyondTheCut(double share, double deviate) {
        assertThat(Chance.deviate(share)).isEqualTo(deviate);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # nine of ten lie below 1 + width, as many above 1 / (1 + width), half below 1
        0.2, 0.9, 1.2
        0.2, 0.1, 0.83333333
        0.5, 0.9, 1.5
        0.5, 0.5, 1
        1,   0.1, 0.5""")
    void aFactorIsAsWideAsAKeeperSays(double width, double share, double factor) {
        assertThat(Chance.factor(width, Chance.deviate(share))).isCloseTo(factor, within(SEVEN_FIGURES));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # half a triangle is width / (1 - sqrt(0.2)) = 1.809 017 widths
        0.06, 0.9, 1.06
        0.06, 0.1, 0.94
        0.06, 0.5, 1
        0.06, 1,   1.10854102
        0.06, 0,   0.89145898""")
    void aToleranceIsNeverExceeded(double width, double share, double factor) {
        assertThat(Chance.tolerance(width, share)).isCloseTo(factor, within(1e-8));
    }

    @Test
    void nothingIsOffWhereTheWidthIsNothing() {
        assertThat(Chance.factor(0, 3.3)).isEqualTo(1);
        assertThat(Chance.tolerance(0, 0.99)).isEqualTo(1);
        assertThat(Chance.off(0, 3.3)).isZero();
    }

    @Test
    void twoHalvesOfTheVarianceMakeOneDeviate() {
        double common = Chance.both(1, 0);
        double own = Chance.both(0, 1);

        assertThat(common).isEqualTo(own);
        assertThat(common * common + own * own).isCloseTo(1, within(ROUNDING));
    }

    /** The mean of a lognormal is above its median by half the variance of its logarithm. */
    @Test
    void whatIsDrawnIsLognormalByTheTestOfKolmogorovAndSmirnov() {
        double sd = Math.log(1.3) / Chance.Z90;

        double p = new KolmogorovSmirnovTest()
                .kolmogorovSmirnovTest(
                        new LogNormalDistribution(0, sd), drawn(share -> Chance.factor(0.3, Chance.deviate(share))));

        assertThat(p).isGreaterThan(RARELY);
    }

    @Test
    void whatIsDrawnIsNormalByTheTestOfKolmogorovAndSmirnov() {
        double p = new KolmogorovSmirnovTest()
                .kolmogorovSmirnovTest(
                        new NormalDistribution(0, 0.02 / Chance.Z90),
                        drawn(share -> Chance.off(0.02, Chance.deviate(share))));

        assertThat(p).isGreaterThan(RARELY);
    }

    @Test
    void whatIsDrawnIsTriangularByTheTestOfKolmogorovAndSmirnov() {
        double half = 0.06 * 1.8090169943749475;

        double p = new KolmogorovSmirnovTest()
                .kolmogorovSmirnovTest(
                        new TriangularDistribution(1 - half, 1, 1 + half),
                        drawn(share -> Chance.tolerance(0.06, share)));

        assertThat(p).isGreaterThan(RARELY);
    }

    private interface Law {
        double of(double share);
    }

    private static double[] drawn(Law law) {
        java.util.SplittableRandom random = new java.util.SplittableRandom(11);
        return IntStream.range(0, SAMPLES)
                .mapToDouble(i -> law.of(random.nextDouble()))
                .toArray();
    }
}
