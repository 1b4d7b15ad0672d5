package lungfish.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import lungfish.catalogue.BlowerClass.Level;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

final class LevelsTest {
    /** 10 lg 2 and 10 lg 3 are usually printed to one decimal. */
    private static final double ONE_DECIMAL_DB = 0.05;

    private static final double ROUNDING_DB = 1e-9;

    @Test
    void twoEqualPumpsAreThreeDecibelsLouderThanOne() {
        assertThat(sum(40, 40)).isCloseTo(43.0, within(ONE_DECIMAL_DB));
    }

    /** Common practice; 10 lg 3 = 4.77. */
    @Test
    void threeEqualPumpsAreFourPointEightDecibelsLouderThanOne() {
        assertThat(sum(40, 40, 40)).isCloseTo(44.8, within(ONE_DECIMAL_DB));
    }

    @Test
    void noMachineIsSilence() {
        assertThat(sum()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** By hand: 6 dB for each doubling of the distance, 20 lg 2 = 6.02. */
    @Test
    void aLevelFurtherAwayMeansALouderMachine() {
        double near = Levels.powerDb(new Level(42, 1));
        double far = Levels.powerDb(new Level(42, 2));
        assertThat(far - near).isCloseTo(6.02, within(0.005));
    }

    /** By hand: half the sound on each way and all of one way taken leaves half, −3.01 dB. */
    @Test
    void theBestSilencerLeavesTheCasing() {
        assertThat(Levels.silencedDb(0.5, 200)).isCloseTo(3.01, within(0.005));
        assertThat(Levels.silencedDb(0.5, 0)).isZero();
    }

    @Property
    void levelsAddInAnyOrder(
            @ForAll @DoubleRange(min = 0, max = 120) double a, @ForAll @DoubleRange(min = 0, max = 120) double b) {
        assertThat(sum(a, b)).isCloseTo(sum(b, a), within(ROUNDING_DB));
    }

    @Property
    void togetherTheyAreLouderThanTheLoudestByNoMoreThanTheirNumberAllows(
            @ForAll @DoubleRange(min = 0, max = 120) double a, @ForAll @DoubleRange(min = 0, max = 120) double b) {
        double loudest = Math.max(a, b);
        assertThat(sum(a, b)).isBetween(loudest, loudest + Levels.manyDb(2) + ROUNDING_DB);
    }

    @Property
    void whatIsAddedCanBeTakenOffAgain(
            @ForAll @DoubleRange(min = 0, max = 120) double level, @ForAll @IntRange(min = -10, max = 20) int above) {
        double background = level - above;
        assertThat(Levels.less(sum(level, background), background)).isCloseTo(level, within(1e-6));
    }

    private static double sum(double... levels) {
        return Levels.sum(DoubleStream.of(levels));
    }
}
