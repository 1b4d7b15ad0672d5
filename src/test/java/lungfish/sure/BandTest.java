package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class BandTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 11, 999, 1000})
    void theBandIsThatOfTheLibrary(int samples) {
        SplittableRandom random = new SplittableRandom(samples);
        double[] drawn = IntStream.range(0, samples)
                .mapToDouble(i -> random.nextDouble())
                .toArray();
        Percentile library = new Percentile().withEstimationType(Percentile.EstimationType.R_7);

        Band band = Band.of(drawn, 0.5);

        assertThat(band.lowSi()).isCloseTo(library.evaluate(drawn, 10), within(ROUNDING));
        assertThat(band.medianSi()).isCloseTo(library.evaluate(drawn, 50), within(ROUNDING));
        assertThat(band.highSi()).isCloseTo(library.evaluate(drawn, 90), within(ROUNDING));
    }

    @Test
    void elevenNumbersHaveTheirSecondFirstAndTenthForABand() {
        Band band = Band.of(new double[] {10, 0, 1, 9, 2, 8, 3, 7, 4, 6, 5}, 4);

        assertThat(band).isEqualTo(new Band(1, 5, 9, 4));
    }

    /** From 8 to 10 and 14 kPa: 9 kPa is half way from the lower end to the middle. */
    @ParameterizedTest
    @CsvSource({"7900, true", "8900, true", "9100, false", "10000, false", "14500, false"})
    void thePlanIsLowWhereMostLieAboveIt(double planned, boolean low) {
        assertThat(new Band(8000, 10_000, 14_000, planned).isPlannedLow()).isEqualTo(low);
    }

    @Test
    void whereNothingIsOffThePlanIsNotLow() {
        assertThat(new Band(9000, 9000, 9000, 9000).isPlannedLow()).isFalse();
    }

    /** 95 % intervals of Wilson's score; 8 of 10 is a textbook's case, none of 10 is z² / (n + z²) = 3.8415 / 13.8415. */
    @ParameterizedTest
    @CsvSource({"8, 10, 0.4902, 0.9433", "0, 10, 0, 0.2775", "10, 10, 0.7225, 1", "500, 1000, 0.4691, 0.5309"})
    void oddsAreAsSureAsWilsonSays(int holds, int of, double least, double most) {
        Odds odds = new Odds(holds, of);

        assertThat(odds.leastShare()).isCloseTo(least, within(5e-5));
        assertThat(odds.mostShare()).isCloseTo(most, within(5e-5));
    }
}
