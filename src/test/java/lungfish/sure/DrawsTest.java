package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lungfish.demand.Need;
import lungfish.sure.Layout.Common;
import lungfish.sure.Layout.Trait;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class DrawsTest {
    private static final int SAMPLES = 500;
    private static final double RARELY = 0.01;

    /** Three standard errors, 1 / √499, of a rank correlation that is none. */
    private static final double NO_CORRELATION = 0.134;

    private final List<Need> needs =
            Doubtful.basis(Doubtful.room(4, Doubtful.exact())).piped().needs();
    private final Layout layout = Layout.of(List.of(needs));
    private final Draws draws = new Draws(layout, SAMPLES, 3);

    private static double[] each(java.util.function.IntToDoubleFunction draw) {
        return IntStream.range(0, SAMPLES).mapToDouble(draw).toArray();
    }

    @ParameterizedTest
    @EnumSource
    void eachPartOfTheRangeOfASharedInputIsMetOnce(Common input) {
        assertThat(IntStream.range(0, SAMPLES).map(i -> (int) (draws.share(input, i) * SAMPLES)))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, SAMPLES).boxed().toList());
    }

    @Test
    void ofTwoInputsNeitherFollowsTheOther() {
        double rank = new SpearmansCorrelation()
                .correlation(each(i -> draws.share(Common.CURVE, i)), each(i -> draws.share(Common.WEAR, i)));

        assertThat(Math.abs(rank)).isLessThan(NO_CORRELATION);
    }

    @Test
    void ofTwoOutletsNeitherFollowsTheOther() {
        double rank = new SpearmansCorrelation()
                .correlation(
                        each(i -> draws.ofOutlet(needs.get(0), Trait.DEPTH, i)),
                        each(i -> draws.ofOutlet(needs.get(1), Trait.DEPTH, i)));

        assertThat(Math.abs(rank)).isLessThan(NO_CORRELATION);
    }

    @Test
    void theLuckOfAnOutletIsSpreadAsChanceWouldByTheTestOfKolmogorovAndSmirnov() {
        double[] shares = each(i -> new org.hipparchus.distribution.continuous.NormalDistribution(0, 1)
                .cumulativeProbability(draws.ofOutlet(needs.get(2), Trait.FLOW, i)));

        assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new UniformRealDistribution(0, 1), shares))
                .isGreaterThan(RARELY);
    }

    @Test
    void devicesOfOneClassShareTheirLuck() {
        assertThat(draws.ofClass(needs.get(0), Trait.RESISTANCE, 7))
                .isEqualTo(draws.ofClass(needs.get(3), Trait.RESISTANCE, 7));
    }

    @Test
    void theSameSeedDrawsTheSame() {
        Draws again = new Draws(layout, SAMPLES, 3);
        Draws other = new Draws(layout, SAMPLES, 4);

        assertThat(each(i -> again.share(Common.WEAR, i))).isEqualTo(each(i -> draws.share(Common.WEAR, i)));
        assertThat(each(i -> other.share(Common.WEAR, i))).isNotEqualTo(each(i -> draws.share(Common.WEAR, i)));
    }
}
