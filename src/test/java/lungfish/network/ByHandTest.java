package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Networks small enough to be worked by hand. */
final class ByHandTest {
    /** Figures that hold by symmetry or by balance alone; what is left is rounding. */
    private static final double ROUNDING_PERCENT = 1e-9;

    /** A pipe that loses a fraction of a pascal is solved to 1e-10 Pa of it. */
    private static final double SMALL_FALL_PERCENT = 1e-6;

    /** A setting computed in one solve and used in another: spares of pascals, each resolved to 1e-10 Pa. */
    private static final double SOLVED_TWICE = 1e-8;

    private static final double DENSITY = Conditions.usual().airDensityKgPerM3();

    @Test
    void aSlowPipeFollowsHagenPoiseuille() {
        AsSet answer = Small.network()
                .pipe("a", "b", 10.0, 0.01)
                .fixed("a", 10.0)
                .fixed("b", 0.0)
                .asSet();
        // Q = π D⁴ Δp / (128 µ L) at the mean pressure, Re 380; free air is more by the mean pressure over ambient
        double viscosity = 1.458e-6 * Math.pow(293.15, 1.5) / (293.15 + 110.4);
        double volume = Math.PI * Math.pow(0.01, 4) * 10.0 / (128.0 * viscosity * 10.0);
        assertThat(answer.pipe(0).freeM3PerS()).isCloseTo(volume * 101_330.0 / 101_325.0, withinPercentage(1e-6));
        assertThat(answer.pipe(0).regime()).isEqualTo(Regime.LAMINAR);
    }

    @Test
    void aRingFedAtOnePlaceGivesEachSideTheSame() {
        Small ring = Small.network().fixed("n0", 9000.0);
        for (int i = 0; i < 8; i++) {
            ring.pipe("n" + i, "n" + (i + 1) % 8, 0.5, 0.02).add(Small.drop("d" + i, "n" + i, 1e12));
        }
        AsSet answer = ring.asSet();
        for (int i = 1; i < 4; i++) {
            assertThat(answer.drop(i).freeM3PerS())
                    .isCloseTo(answer.drop(8 - i).freeM3PerS(), withinPercentage(ROUNDING_PERCENT));
            assertThat(answer.pipe(i).freeM3PerS())
                    .isCloseTo(-answer.pipe(7 - i).freeM3PerS(), withinPercentage(ROUNDING_PERCENT));
        }
    }

    @Test
    void twoEqualPipesSideBySideShareTheAir() {
        AsSet answer = Small.network()
                .add(new Pipe("left", "a", "b", 3.0, 0.02, 0.0, 1.0))
                .add(new Pipe("right", "a", "b", 3.0, 0.02, 0.0, 1.0))
                .fixed("a", 3000.0)
                .add(Small.drop("d", "b", 1e10))
                .asSet();
        double half = answer.totalFreeM3PerS() / 2.0;
        assertThat(answer.pipe(0).freeM3PerS()).isCloseTo(half, withinPercentage(ROUNDING_PERCENT));
        assertThat(answer.pipe(1).freeM3PerS()).isCloseTo(half, withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void twoFittingsSideBySideShareByTheRootsOfTheirFactors() {
        AsSet answer = Small.network()
                .add(new Pipe("one", "a", "b", 0.0, 0.02, 0.0, 1.0))
                .add(new Pipe("nine", "a", "b", 0.0, 0.02, 0.0, 9.0))
                .fixed("a", 6000.0)
                .add(Small.drop("d", "b", 1e10))
                .asSet();
        // K ṁ² equal on both: ṁ in the ratio √9 : √1, so three quarters and one quarter
        assertThat(answer.pipe(0).freeM3PerS())
                .isCloseTo(0.75 * answer.totalFreeM3PerS(), withinPercentage(SMALL_FALL_PERCENT));
    }

    @Test
    void aLoopOfTheTextbookKindIsBalancedByHardyCrossCorrections() {
        // one loop of four fittings, r = 1, 2, 3, 1 by their K; 100 units in at the first corner, 20, 30, 50 out
        double unit = 1e-6;
        Small loop = Small.network().fixed("A", 0.0);
        String[] ends = {"A", "B", "B", "C", "D", "C", "A", "D"};
        double[] k = {100.0, 200.0, 300.0, 100.0};
        for (int i = 0; i < 4; i++) {
            loop.add(new Pipe("p" + i, ends[2 * i], ends[2 * i + 1], 0.0, 0.02, 0.0, k[i]));
        }
        double[] out = {20.0, 50.0, 30.0};
        String[] at = {"B", "C", "D"};
        for (int i = 0; i < 3; i++) {
            loop.add(Small.drop("d" + i, at[i], 0.0).withTarget(out[i] * unit));
        }
        Tuned answer = loop.tuned();
        double ab = HardyCross.flowThroughFirst(k, out);
        assertThat(answer.pipe(0).freeM3PerS()).isCloseTo(ab * unit, withinPercentage(1e-6));
    }

    /** H. Cross, Univ. of Illinois Bull. 286, 1936: the loop's correction is −Σ r Q|Q| / Σ 2 r |Q|, repeated. */
    private static final class HardyCross {
        private HardyCross() {}

        static double flowThroughFirst(double[] r, double[] out) {
            double ab = 50.0;
            for (int i = 0; i < 100; i++) {
                double[] way = {ab, ab - out[0], -(100.0 - ab - out[2]), -(100.0 - ab)};
                double fall = 0.0;
                double slope = 0.0;
                for (int p = 0; p < 4; p++) {
                    fall += r[p] * way[p] * Math.abs(way[p]);
                    slope += 2.0 * r[p] * Math.abs(way[p]);
                }
                ab -= fall / slope;
            }
            return ab;
        }
    }

    @Test
    void aBlowerAndOneDropMeetWhereTheirCurvesCross() {
        Device device = new Device(1000.0, 1e7, 0.0);
        Drop drop = new Drop(
                "d",
                "a",
                1.0,
                1.0,
                Optional.empty(),
                Optional.empty(),
                Optional.of(device),
                0.0,
                OptionalDouble.of(1e-4));
        AsSet answer = Small.network()
                .blower("a", Small.straight(2e-3, 20_000.0))
                .add(drop)
                .asSet();
        // q = 2e-3 (1 − p/20000) and p = 1000 + 1e7 q: p = 1000 + 20000 − p, so p = 10500 Pa and q = 9.5e-4
        assertThat(answer.source(0).gaugePa()).isCloseTo(10_500.0, within(1e-3));
        assertThat(answer.drop(0).freeM3PerS()).isCloseTo(9.5e-4, withinPercentage(1e-5));
    }

    @Test
    void twoBlowersAtOnePlaceAddTheirFlows() {
        Curve curve = Small.straight(1e-3, 20_000.0);
        Network two = Small.network()
                .blower("a", curve)
                .add(Small.drop("d", "a", 1e10))
                .build();
        Network pair = two.withSources(List.of(new Source.Blower("b", "a", curve, 2)));
        Network split =
                two.withSources(List.of(new Source.Blower("b", "a", curve, 1), new Source.Blower("c", "a", curve, 1)));
        assertThat(Small.asSet(pair).drop(0).freeM3PerS())
                .isCloseTo(Small.asSet(split).drop(0).freeM3PerS(), withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void aShutNetworkStandsWhereTheStrongestBlowerShuts() {
        AsSet answer = Small.network()
                .pipe("a", "b", 2.0, 0.02)
                .blower("a", Small.straight(1e-3, 8000.0))
                .blower("b", Small.straight(1e-3, 5000.0))
                .add(Small.drop("d", "b", Drop.SHUT_K))
                .asSet();
        assertThat(answer.nodeGaugePa(0)).isCloseTo(8000.0, within(1e-9));
        assertThat(answer.nodeGaugePa(1)).isCloseTo(8000.0, within(1e-9));
        assertThat(answer.totalFreeM3PerS()).isZero();
        assertThat(answer.source(1).shut()).isTrue();
        assertThat(answer.drop(0).state()).isEqualTo(DropFlow.State.CLOSED);
    }

    @Test
    void aDropAtItsOpeningPressureIsClosed() {
        double opensPa = Drops.opensAtGaugePa(Conditions.usual(), Small.drop("d", "a", 1e10));
        Network network = Small.network()
                .fixed("a", opensPa)
                .add(Small.drop("d", "a", 1e10))
                .build();
        assertThat(Small.asSet(network).drop(0).state()).isEqualTo(DropFlow.State.CLOSED);
    }

    @Test
    void aFixedSourceMayTakeAirBack() {
        AsSet answer = Small.network()
                .pipe("a", "b", 5.0, 0.02)
                .fixed("a", 2000.0)
                .fixed("b", 1000.0)
                .asSet();
        assertThat(answer.source(1).freeM3PerS())
                .isNegative()
                .isEqualTo(-answer.source(0).freeM3PerS());
    }

    @Test
    void tunedFlowsAreTheTargetsAndTheIndexDropHasNothingToSpare() {
        Tuned answer = Small.network()
                .fixed("a", 20_000.0)
                .pipe("a", "b", 20.0, 0.012)
                .pipe("b", "c", 20.0, 0.012)
                .add(Small.drop("near", "b", 1e12))
                .add(Small.drop("far", "c", 1e12))
                .tuned();
        assertThat(answer.indexDrop()).isEqualTo(1);
        assertThat(answer.drop(0).freeM3PerS()).isCloseTo(2.0 / 60_000.0, withinPercentage(ROUNDING_PERCENT));
        assertThat(answer.tunedDrop(1).sparePa().orElseThrow()).isCloseTo(0.0, within(1e-9));
        // the main loses between b and c what the near drop has to spare
        assertThat(answer.tunedDrop(0).sparePa().orElseThrow())
                .isCloseTo(answer.pipe(1).dropPa(), within(1e-9));
    }

    @Test
    void theTunedSettingsMakeTheNetworkTakeItsTargets() {
        Network network = RandomNetworks.roomLike(7);
        Tuned tuned = (Tuned) Solver.of(network).tuned();
        List<Drop> set = new ArrayList<>();
        for (int i = 0; i < network.drops().size(); i++) {
            double valveK = tuned.tunedDrop(i).tunedValveK().orElseThrow();
            set.add(network.drops().get(i).withValveK(valveK));
        }
        List<Source> held = new ArrayList<>();
        for (Source source : network.sources()) {
            held.add(new Source.FixedPressure(source.id(), source.node(), tuned.requiredGaugePa()));
        }
        AsSet again = Small.asSet(network.withDrops(set).withSources(held));
        for (int i = 0; i < set.size(); i++) {
            assertThat(again.drop(i).overTarget().orElseThrow()).isCloseTo(1.0, within(SOLVED_TWICE));
        }
    }

    @Test
    void freeAirIsTheMassOverTheDensityOfTheRoom() {
        AsSet answer = Small.network()
                .pipe("a", "b", 1.0, 0.02)
                .fixed("a", 5000.0)
                .add(Small.drop("d", "b", 1e10))
                .asSet();
        double re = 4.0
                * answer.pipe(0).freeM3PerS()
                * DENSITY
                / (Math.PI * 0.02 * 1.458e-6 * Math.pow(293.15, 1.5) / 403.55);
        assertThat(answer.pipe(0).re()).isCloseTo(re, withinPercentage(ROUNDING_PERCENT));
    }
}
