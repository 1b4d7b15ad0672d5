package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

final class CurveTest {
    /** The figures below are exact fractions; what is left is rounding. */
    private static final double ROUNDING = 1e-13;

    /** Slopes by hand, Fritsch and Butland 1984: widths 1 and 2, secants −2 and −3. */
    private static final Curve BY_HAND = curve(0, 10, 1, 8, 3, 2);

    private static Curve curve(double... pressureThenFlow) {
        List<Curve.Point> points = IntStream.range(0, pressureThenFlow.length / 2)
                .mapToObj(i -> new Curve.Point(pressureThenFlow[2 * i], pressureThenFlow[2 * i + 1]))
                .toList();
        return Curve.of(points);
    }

    @Test
    void aCurveGoesThroughItsPoints() {
        assertThat(List.of(BY_HAND.flowAt(0), BY_HAND.flowAt(1), BY_HAND.flowAt(3)))
                .containsExactly(10.0, 8.0, 2.0);
    }

    @Test
    void theInnerSlopeIsTheWeightedHarmonicMean() {
        // weights 2·2+1 = 5 and 2+2·1 = 4: (5+4)/(5/−2 + 4/−3) = −54/23
        assertThat(BY_HAND.slopeAt(1)).isCloseTo(-54.0 / 23.0, within(ROUNDING));
    }

    @Test
    void theEndSlopesAreThoseOfAParabola() {
        // ((2·1+2)·(−2) − 1·(−3))/3 = −5/3 and ((2·2+1)·(−3) − 2·(−2))/3 = −11/3
        assertThat(BY_HAND.slopeAt(0)).isCloseTo(-5.0 / 3.0, within(ROUNDING));
        assertThat(BY_HAND.slopeAt(3)).isCloseTo(-11.0 / 3.0, within(ROUNDING));
    }

    @Test
    void betweenTwoPointsItIsACubic() {
        // Hermite at the middle: (10+8)/2 + (1/8)(−5/3 + 54/23) = 9 + 47/552
        assertThat(BY_HAND.flowAt(0.5)).isCloseTo(9.0 + 47.0 / 552.0, within(ROUNDING));
    }

    @Test
    void aFlatPieceStaysFlat() {
        Curve flat = curve(0, 5, 10, 5, 20, 0);
        assertThat(flat.flowAt(3)).isEqualTo(5.0);
        assertThat(flat.slopeAt(10)).isZero();
    }

    @Test
    void twoPointsAreAStraightLine() {
        assertThat(curve(0, 4, 8, 0).flowAt(2)).isCloseTo(3.0, within(ROUNDING));
    }

    @Test
    void beyondThePointsTheEndSlopeGoesOnAndIsSaidToBeOutside() {
        assertThat(BY_HAND.flowAt(-3)).isCloseTo(15.0, within(ROUNDING));
        assertThat(BY_HAND.isInside(-3)).isFalse();
        assertThat(BY_HAND.flowAt(3.3)).isCloseTo(2.0 - 1.1, within(ROUNDING));
        assertThat(BY_HAND.isInside(3.3)).isFalse();
    }

    @Test
    void aboveALastPointOfNoFlowItIsShutAndInside() {
        Curve toZero = curve(0, 4, 8, 0);
        assertThat(toZero.flowAt(9)).isZero();
        assertThat(toZero.slopeAt(9)).isZero();
        assertThat(toZero.isInside(9)).isTrue();
    }

    @Test
    void itShutsWhereItsEndSlopeMeetsNoFlow() {
        // from 2 at 3 Pa down with −11/3
        assertThat(BY_HAND.shutGaugePa()).isCloseTo(3.0 + 6.0 / 11.0, within(ROUNDING));
        assertThat(curve(0, 5, 10, 0, 20, 0).shutGaugePa()).isEqualTo(10.0);
        assertThat(curve(0, 5, 10, 5).shutGaugePa()).isInfinite();
    }

    @Test
    void pressureAtAFlowIsTheInverse() {
        assertThat(BY_HAND.pressureAt(8)).isCloseTo(1.0, within(ROUNDING));
        assertThat(BY_HAND.pressureAt(15)).isCloseTo(-3.0, within(ROUNDING));
        assertThat(BY_HAND.pressureAt(0)).isEqualTo(BY_HAND.shutGaugePa());
        assertThat(curve(0, 5, 10, 5, 20, 0).pressureAt(5)).isCloseTo(10.0, within(1e-6));
        assertThat(curve(0, 5, 10, 5).pressureAt(4)).isNaN();
    }

    @Test
    void aCurveThatRisesIsRefused() {
        assertThatThrownBy(() -> curve(0, 1, 1, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve(1, 2, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve(1, 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void itNeverRisesAndNeverLeavesItsNeighbours(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double first,
            @ForAll @DoubleRange(min = 0, max = 1) double second) {
        Curve any = RandomNetworks.curve(seed);
        double end = any.points().get(any.points().size() - 1).gaugePa();
        double low = Math.min(first, second) * end;
        double high = Math.max(first, second) * end;
        double open = any.flowAt(0.0);
        assertThat(any.flowAt(high)).isBetween(0.0, any.flowAt(low) + ROUNDING * open);
        assertThat(any.slopeAt(low)).isNotPositive();
    }
}
