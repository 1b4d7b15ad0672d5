package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class PipeFlowTest {
    private static final double PLASTIC_ROUGHNESS_M = 1.5e-6;
    private static final double ROOM_K = 293.15;
    private static final Gas AIR = Gas.airAt(ROOM_K);
    private static final double ROOT_PERCENT = 1e-9;

    /** Hagen–Poiseuille takes one density for the whole pipe; over a fall of 0.1 % of the pressure it is that exact. */
    private static final double ONE_DENSITY_PERCENT = 0.1;

    @Test
    void aSlowAirlineFollowsHagenPoiseuille() {
        // 2 m of 4 mm airline, 1 L/min: Δp = 128 µ L Q / (π D⁴), Re about 350
        double flow = Air.densityKgPerM3(101325.0, ROOM_K) / 60_000.0;
        double expected = 128.0 * 1.813e-5 * 2.0 / 60_000.0 / (Math.PI * Math.pow(0.004, 4)); // 96.2 Pa
        double inlet = PipeFlow.inletPa(new Tube(2.0, 0.004, 0.0, 0.0), AIR, ROOM_K, 101325.0, flow);
        assertThat(inlet - 101325.0).isCloseTo(expected, withinPercentage(ONE_DENSITY_PERCENT));
    }

    @Test
    void aBareFittingTakesItsVelocityHeads() {
        // K ρ v²/2 by hand: ρ 1.2041, 10 m/s, K 1.5 -> 90.3 Pa
        Tube elbow = new Tube(0.0, 0.02, 0.0, 1.5);
        double flow = 1.2041 * 10.0 * Math.PI / 4.0 * 0.02 * 0.02;
        double inlet = PipeFlow.inletPa(elbow, AIR, ROOM_K, 101325.0, flow);
        assertThat(inlet - 101325.0).isCloseTo(90.3, withinPercentage(ONE_DENSITY_PERCENT));
    }

    @Property
    void theFlowFoundFromTwoPressuresTakesTheFallBetweenThem(
            @ForAll @DoubleRange(min = 0.0, max = 200.0) double lengthM,
            @ForAll @DoubleRange(min = 2.0, max = 80.0) double boreMm,
            @ForAll @DoubleRange(min = 0.01, max = 20.0) double loss,
            @ForAll @DoubleRange(min = -9.0e4, max = 9.0e4) double fallPa) {
        Tube tube = new Tube(lengthM, boreMm / 1000.0, PLASTIC_ROUGHNESS_M, loss);
        double first = 101325.0 + Math.max(fallPa, 0.0);
        double second = 101325.0 + Math.max(-fallPa, 0.0);
        double drop = (first - second) * (first + second);
        double flow = PipeFlow.flowKgPerS(tube, AIR, ROOM_K, first, second);
        assertThat(PipeLaw.of(tube, AIR, ROOM_K).piDropPa2(flow)).isCloseTo(drop, offset(1e-11 * Math.abs(drop)));
    }

    @Property
    void moreFallDrivesMoreAir(
            @ForAll @DoubleRange(min = 0.1, max = 200.0) double lengthM,
            @ForAll @DoubleRange(min = 2.0, max = 80.0) double boreMm,
            @ForAll @DoubleRange(min = 0.01, max = 5.0e4) double fallPa,
            @ForAll @DoubleRange(min = 0.01, max = 5.0e4) double morePa) {
        PipeLaw law = PipeLaw.of(new Tube(lengthM, boreMm / 1000.0, 0.0, 0.0), AIR, ROOM_K);
        assertThat(law.flowKgPerS((fallPa + morePa) * 2e5)).isGreaterThan(law.flowKgPerS(fallPa * 2e5));
    }

    @Property
    void outletAndFlowAgreeWithTheAccelerationCounted(
            @ForAll @DoubleRange(min = 1.0, max = 200.0) double lengthM,
            @ForAll @DoubleRange(min = 10.0, max = 80.0) double boreMm,
            @ForAll @DoubleRange(min = 10.0, max = 3.0e4) double fallPa) {
        Tube tube = new Tube(lengthM, boreMm / 1000.0, PLASTIC_ROUGHNESS_M, 1.0);
        double inlet = 101325.0 + fallPa;
        double flow = PipeFlow.flowWithAccelerationKgPerS(tube, AIR, ROOM_K, inlet, 101325.0);
        assertThat(PipeFlow.outletWithAccelerationPa(tube, AIR, ROOM_K, inlet, flow))
                .hasValueCloseTo(101325.0, withinPercentage(ROOT_PERCENT));
    }

    @Test
    void aPipeThatCannotPassTheFlowSaysSo() {
        Tube straw = new Tube(10.0, 0.004, 0.0, 0.0);
        assertThat(PipeFlow.outletPa(straw, AIR, ROOM_K, 120_000.0, 0.01)).isEmpty();
        assertThat(PipeFlow.outletWithAccelerationPa(straw, AIR, ROOM_K, 120_000.0, 0.01))
                .isEmpty();
    }

    @Test
    void noFallMovesNoAirAndAnEmptyPipeResistsNothing() {
        PipeLaw pipe = PipeLaw.of(new Tube(3.0, 0.02, 0.0, 0.0), AIR, ROOM_K);
        PipeLaw nothing = PipeLaw.of(new Tube(0.0, 0.02, 0.0, 0.0), AIR, ROOM_K);
        assertThat(pipe.flowKgPerS(0.0)).isZero();
        assertThat(nothing.flowKgPerS(1.0)).isInfinite();
    }
}
