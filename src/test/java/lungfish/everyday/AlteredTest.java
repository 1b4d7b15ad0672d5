package lungfish.everyday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Source;
import org.junit.jupiter.api.Test;

/**
 * Two equal drops, each a valve of k = 1e11 1/m⁴ to the open air, on one node, worked by hand.
 *
 * <p>A valve takes {@code x (2 p₀ + x) = 2 k p₀ ρ q²} at a gauge pressure x, with room and pipe equally warm; so
 * {@code q = c √(x (2 p₀ + x))}, {@code c = 1/√(2 k p₀ ρ)}. With p₀ = 101 325 Pa, √(x (2 p₀ + x)) is 28 750.65 Pa at 4 kPa and
 * 41 051.19 Pa at 8 kPa. The straight curve {@code Q₀ (1 − x/P₀)} that gives two drops at 4 kPa and one at 8 kPa follows from
 * both: 2 · 28 750.65 / 41 051.19 = 1.400722 = (1 − 4000/P₀)/(1 − 8000/P₀), so P₀ = 17 982.0 Pa and Q₀ = 73 951.4 Pa · c.
 */
final class AlteredTest {
    private static final double K = 1e11;
    private static final Conditions USUAL = Conditions.usual();
    private static final double C = 1 / Math.sqrt(2 * K * USUAL.ambientPa() * USUAL.airDensityKgPerM3());

    /** Six figures by hand. */
    private static final double BY_HAND_PERCENT = 0.001;

    private static final double ROUNDING_PERCENT = 1e-9;

    private static Drop drop(String id) {
        return new Drop(
                id, "n", K, K, Optional.empty(), Optional.empty(), Optional.empty(), 0, OptionalDouble.of(1e-4));
    }

    private static AsSet solved(Source source) {
        Network network = new Network(
                USUAL, List.of("n"), List.of(), List.of(drop("a"), drop("b")), List.of(source), Optional.empty());
        return Altered.solved(network).orElseThrow();
    }

    /** With the first of the two drops shut. */
    private static Altered oneShut(AsSet before) {
        List<Drop> drops = List.of(drop("a").withValveK(Drop.SHUT_K), drop("b"));
        return Altered.of(before, drops, before.network().sources()).orElseThrow();
    }

    private static Source straight() {
        Curve curve = Curve.of(List.of(new Curve.Point(0, 73_951.4 * C), new Curve.Point(17_982.0, 0)));
        return new Source.Blower("blower", "n", curve, 1);
    }

    @Test
    void onAHeldPressureNobodyNoticesThatAnotherIsShut() {
        Altered altered = oneShut(solved(new Source.FixedPressure("held", "n", 4000)));

        assertThat(altered.after().drop(0).freeM3PerS()).isCloseTo(0, within(1e-12));
        assertThat(altered.after().drop(1).freeM3PerS())
                .isCloseTo(altered.before().drop(1).freeM3PerS(), withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void onAStraightCurveAlteredOneOfTwoRaisesThePressureByFourKilopascals() {
        Altered altered = oneShut(solved(straight()));

        assertThat(Altered.highestPa(altered.before())).isCloseTo(4000, withinPercentage(BY_HAND_PERCENT));
        assertThat(Altered.highestPa(altered.after())).isCloseTo(8000, withinPercentage(BY_HAND_PERCENT));
        // 41 051.19 / 28 750.65
        assertThat(altered.after().drop(1).freeM3PerS()
                        / altered.before().drop(1).freeM3PerS())
                .isCloseTo(1.427835, withinPercentage(BY_HAND_PERCENT));
    }

    /** At 4 kPa the one that stays takes what it took; what the other took is left over. */
    @Test
    void theBleedThatHoldsThePressureLetsOutWhatTheShutOneTook() {
        Altered altered = oneShut(solved(straight()));
        AsSet held = altered.held(2).orElseThrow();

        assertThat(held.source(0).freeM3PerS()).isCloseTo(28_750.65 * C, withinPercentage(BY_HAND_PERCENT));
        assertThat(altered.before().source(0).freeM3PerS() - held.source(0).freeM3PerS())
                .isCloseTo(28_750.65 * C, withinPercentage(BY_HAND_PERCENT));
    }

    @Test
    void whatIsBledIsWhatStandsBehindTheOutlets() {
        AsSet set = solved(straight());

        assertThat(Altered.bledM3PerS(set, 1)).isEqualTo(set.drop(1).freeM3PerS());
        assertThat(Altered.bledM3PerS(set, 2)).isZero();
    }
}
