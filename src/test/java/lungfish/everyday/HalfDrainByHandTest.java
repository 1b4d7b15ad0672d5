package lungfish.everyday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Valve;
import lungfish.air.ValveCurve;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Source;
import org.junit.jupiter.api.Test;

/**
 * Two equal outlets on one node, each an open tap, no airline, and a device of 1e7 Pa s/m³, 0.40 m deep; a straight blower of
 * 4e-4 m³/s open that is shut at 8 kPa. All of it is linear: an outlet takes (p − ρ g d)/1e7.
 *
 * <p>ρ g = 998.2 · 9.80665 = 9788.998 Pa/m. Both at 0.40 m, 3915.599 Pa: 2 (p − 3915.599)/1e7 = 4e-4 (1 − p/8000), so
 * 2e-7 p + 0.5e-7 p = 4e-4 + 0.7831198e-3, p = 4732.479 Pa, and each takes 8.16880e-5 m³/s. One half drained out of 0.50 m sits
 * at 0.15 m, 1468.350 Pa: (2 p − 5383.949)/1e7 = 4e-4 − 0.5e-7 p, p = (4e-4 + 5.383949e-4)/2.5e-7 = 3753.580 Pa; it takes
 * 2.285230e-4, and the other, whose 3915.599 Pa are no longer reached, nothing: so it stands alone, (p − 1468.350)/1e7 =
 * 4e-4 − 0.5e-7 p, p = 5.468350e-4/1.5e-7 = 3645.567 Pa, below 3915.599 indeed, and it takes 2.177217e-4 m³/s.
 */
final class HalfDrainByHandTest {
    private static final Conditions USUAL = Conditions.usual();

    /** Six figures by hand. */
    private static final double BY_HAND_PERCENT = 0.001;

    private static Drop drop(String id, double depthM) {
        return new Drop(
                id,
                "n",
                0,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Device(0, 1e7, 0)),
                depthM,
                OptionalDouble.of(8e-5));
    }

    private static Network network(Source source) {
        return new Network(
                USUAL,
                List.of("n"),
                List.of(),
                List.of(drop("a", 0.4), drop("b", 0.4)),
                List.of(source),
                Optional.empty());
    }

    private static Source straight(double openM3PerS) {
        Curve curve = Curve.of(List.of(new Curve.Point(0, openM3PerS), new Curve.Point(8000, 0)));
        return new Source.Blower("blower", "n", curve, 1);
    }

    @Test
    void theShallowerOneHogsAllTheAir() {
        AsSet before = Altered.solved(network(straight(4e-4))).orElseThrow();
        Altered half = Altered.of(
                        before,
                        List.of(drop("a", 0.4 - 0.5 * 0.5), drop("b", 0.4)),
                        before.network().sources())
                .orElseThrow();

        assertThat(Altered.highestPa(before)).isCloseTo(4732.479, withinPercentage(BY_HAND_PERCENT));
        assertThat(before.drop(1).freeM3PerS()).isCloseTo(8.16880e-5, withinPercentage(BY_HAND_PERCENT));
        assertThat(Altered.highestPa(half.after())).isCloseTo(3645.567, withinPercentage(BY_HAND_PERCENT));
        assertThat(half.after().drop(0).freeM3PerS()).isCloseTo(2.177217e-4, withinPercentage(BY_HAND_PERCENT));
        assertThat(half.after().drop(1).freeM3PerS()).isZero();
    }

    /**
     * A blower of half the air, 2e-4 (1 − p/8000): the share s of what both had, 8.16880e-5 each, needs
     * p = 3915.599 + 816.880 s, and 2 s · 8.16880e-5 = 2e-4 − 0.25e-7 p; so s (1.633760e-4 + 0.204220e-4) = 1.021100e-4 and
     * s = 0.555555.
     */
    @Test
    void halfTheAirIsSharedAlike() {
        Curve weak = Curve.of(List.of(new Curve.Point(0, 2e-4), new Curve.Point(8000, 0)));
        Valve any = new Valve(ValveCurve.LINEAR, 6, 0.003);
        Sharing sharing = new Sharing(
                network(new Source.FixedPressure("blower", "n", 0)),
                List.of(any, any),
                new double[] {8.16880e-5, 8.16880e-5},
                weak::flowAt,
                8000);

        assertThat(sharing.shared().orElseThrow().share()).isCloseTo(0.555555, within(1e-5));
    }
}
