package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirliftTest {
    private static final Water WATER = Water.freshAt(293.15);
    private static final FreeAir ROOM = FreeAir.at(0.0, 293.15);
    private static final double LITRE_PER_MIN = 1.0 / 60_000.0;
    private static final double ROOT_PERCENT = 1e-6;

    /** The other program's figures are printed to two digits. */
    private static final double TWO_DIGITS_L_PER_MIN = 0.05;

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # bore mm, air L/min, water L/min: the same balance with Blasius friction, worked by another program;
        # 0.30 m under water and 10 mm of lift, no sponge
        25, 2, 5.8
        19, 2, 4.2
        12.7, 1, 2.0""")
    void shortTubesMoveWhatAnotherProgramFinds(double boreMm, double airLPerMin, double waterLPerMin) {
        Airlift lift = new Airlift(boreMm / 1000.0, 0.31, 0.30, 0.0);
        double water = lift.waterM3PerS(airLPerMin * LITRE_PER_MIN, WATER, ROOM);
        assertThat(water / LITRE_PER_MIN).isCloseTo(waterLPerMin, within(TWO_DIGITS_L_PER_MIN));
    }

    @Property
    void theAirFoundForAWaterFlowMovesThatWater(
            @ForAll @DoubleRange(min = 10.0, max = 40.0) double boreMm,
            @ForAll @DoubleRange(min = 0.15, max = 1.0) double immersedM,
            @ForAll @DoubleRange(min = 0.0, max = 20.0) double sponge,
            @ForAll @DoubleRange(min = 0.2, max = 20.0) double waterLPerMin) {
        Airlift lift = new Airlift(boreMm / 1000.0, immersedM * 1.05, immersedM, sponge);
        var air = lift.freeAirM3PerS(waterLPerMin * LITRE_PER_MIN, WATER, ROOM);
        Assume.that(air.isPresent());
        assertThat(lift.waterM3PerS(air.orElseThrow(), WATER, ROOM))
                .isCloseTo(waterLPerMin * LITRE_PER_MIN, withinPercentage(ROOT_PERCENT));
    }

    @Property
    void aSpongeAlwaysTakesWater(
            @ForAll @DoubleRange(min = 10.0, max = 40.0) double boreMm,
            @ForAll @DoubleRange(min = 0.5, max = 10.0) double airLPerMin,
            @ForAll @DoubleRange(min = 0.1, max = 20.0) double sponge) {
        Airlift bare = new Airlift(boreMm / 1000.0, 0.31, 0.30, 0.0);
        Airlift sponged = new Airlift(boreMm / 1000.0, 0.31, 0.30, sponge);
        double air = airLPerMin * LITRE_PER_MIN;
        Assume.that(bare.waterM3PerS(air, WATER, ROOM) > 0.0);
        assertThat(sponged.waterM3PerS(air, WATER, ROOM)).isLessThan(bare.waterM3PerS(air, WATER, ROOM));
    }

    @Test
    void tooLittleAirLiftsNothing() {
        Airlift halfOut = new Airlift(0.025, 1.0, 0.5, 0.0);
        assertThat(halfOut.waterM3PerS(0.5 * LITRE_PER_MIN, WATER, ROOM)).isZero();
    }

    @Test
    void noAirMovesMoreThanTheTubeCan() {
        assertThat(new Airlift(0.012, 0.31, 0.30, 0.0).freeAirM3PerS(20.0 * LITRE_PER_MIN, WATER, ROOM))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # Wurts, McNeill and Overhults 1994: the model is 53 and 117 % high there
        76, 0.5, 1.0, false
        152, 0.8, 1.0, false
        # Stenning and Martin's own points; a tube too little immersed
        25.4, 4.2672, 0.709, true
        25.4, 4.2672, 0.40, false
        40, 0.3, 1.0, true""")
    void wideOrShallowTubesAreOutsideItsRange(double boreMm, double riserM, double immersion, boolean inside) {
        assertThat(new Airlift(boreMm / 1000.0, riserM, riserM * immersion, 0.0).insideItsRange())
                .isEqualTo(inside);
    }

    @Test
    void aTubeCannotBeDeeperThanItIsLong() {
        assertThatThrownBy(() -> new Airlift(0.02, 0.3, 0.4, 0.0)).hasMessageContaining("0.4");
    }
}
