package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts about compressing air and measuring it, each worked by hand. */
final class BlowingTest {
    /** 0.283 against 0.2857 is 1 %, and 4.1 is printed to two digits. */
    private static final double OTHER_EXPONENT_AND_ROUNDING_PERCENT = 2.2;

    private static final double HAND_PERCENT = 0.1;
    private static final FreeAir ROOM = new FreeAir(101325.0, 293.15);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # gauge kPa, rise K: adiabatic, inlet 20 °C at sea level, worked apart with (k-1)/k = 0.2857
        5, 4.1
        10, 8.0
        20, 15.5
        30, 22.5
        40, 29.2""")
    void compressedAirWarms(double gaugeKPa, double riseK) {
        double rise = Compression.riseK(293.15, 101325.0, 101325.0 + gaugeKPa * 1000.0, 1.0);
        assertThat(rise).isCloseTo(riseK, withinPercentage(OTHER_EXPONENT_AND_ROUNDING_PERCENT));
    }

    @Test
    void halfTheEfficiencyIsTwiceTheRise() {
        double half = Compression.riseK(293.15, 101325.0, 121325.0, 0.5);
        assertThat(half).isCloseTo(2.0 * Compression.riseK(293.15, 101325.0, 121325.0, 1.0), withinPercentage(1e-9));
    }

    @Test
    void everyWattInTheAirIsTheHotEnd() {
        // 60 W into 80 L/min: 60/(1.2041/60000·80·1005) = 37.2 K
        double flow = ROOM.flowKgPerS(80.0 / 60_000.0);
        assertThat(Compression.hottestRiseK(60.0, flow)).isCloseTo(37.2, withinPercentage(HAND_PERCENT));
    }

    @Test
    void aJarAtTheSurfaceFillsInItsVolumeOverTheFlow() {
        // 1 L at 2 L/min: 30 s
        double seconds = JarFill.seconds(0.001, 0.0, Water.freshAt(293.15), ROOM, 2.0 / 60_000.0);
        assertThat(seconds).isCloseTo(30.0, withinPercentage(HAND_PERCENT));
    }

    @Test
    void aDeepJarHoldsMoreFreeAirAndAWarmOneLess() {
        // 0.5 m: 998.2·9.80665·0.5 = 4894.6 Pa, 4.83 % more; water 5 K above the room: 293.15/298.15, 1.68 % less
        double still = JarFill.seconds(0.001, 0.0, Water.freshAt(293.15), ROOM, 1e-5);
        double deep = JarFill.seconds(0.001, 0.5, Water.freshAt(293.15), ROOM, 1e-5);
        double warm = JarFill.seconds(0.001, 0.0, Water.freshAt(298.15), ROOM, 1e-5);
        assertThat(deep / still).isCloseTo(1.0483, withinPercentage(HAND_PERCENT));
        assertThat(warm / still).isCloseTo(0.9832, withinPercentage(HAND_PERCENT));
    }

    @Test
    void theSecondsTellTheFlowBack() {
        double seconds = JarFill.seconds(0.001, 0.3, Water.freshAt(298.15), ROOM, 2.5e-5);
        assertThat(JarFill.freeAirM3PerS(0.001, 0.3, Water.freshAt(298.15), ROOM, seconds))
                .isCloseTo(2.5e-5, withinPercentage(1e-9));
    }

    @Test
    void aDrilledHolePassesTheFlowThatItsDropDrives() {
        // 1 mm, 100 Pa, 1.2 kg/m³: 0.61·7.854e-7·√(2·100/1.2) = 6.185e-6 m³/s
        double flow = Orifice.flowM3PerS(0.001, 100.0, 1.2);
        assertThat(flow).isCloseTo(6.185e-6, withinPercentage(HAND_PERCENT));
        assertThat(Orifice.dropPa(0.001, flow, 1.2)).isCloseTo(100.0, withinPercentage(1e-9));
        assertThat(Orifice.k(0.001) * flow * 1.2 * flow).isCloseTo(100.0, withinPercentage(1e-9));
    }

    @Test
    void stepsInTheBoreLoseWhatTheTextbooksSay() {
        // bores 2 : 1, areas 4 : 1: 0.5·(1 − 1/4) = 0.375 and (1 − 1/4)² = 0.5625
        assertThat(Fittings.contraction(0.02, 0.01)).isCloseTo(0.375, withinPercentage(1e-9));
        assertThat(Fittings.expansion(0.01, 0.02)).isCloseTo(0.5625, withinPercentage(1e-9));
        // K 1 on the wide bore is 1/16 on the narrow
        assertThat(Fittings.onBore(1.0, 0.02, 0.01)).isCloseTo(0.0625, withinPercentage(1e-9));
    }

    @Test
    void pvcAboveItsLimitHasNoRating() {
        assertThat(PipeHeat.pvcFactor(PipeHeat.PVC_LIMIT_K + 0.1)).isEmpty();
        // half way between 100 °F (0.62) and 110 °F (0.50)
        assertThat(PipeHeat.pvcFactor((105.0 - 32.0) / 1.8 + 273.15)).hasValueCloseTo(0.56, withinPercentage(1e-6));
    }

    @Test
    void freeAirAtAltitudeIsThinner() {
        // ISO 2533 at 2000 m: 79 495 Pa; 79495/(287.05·293.15) = 0.9447 kg/m³
        assertThat(FreeAir.at(2000.0, 293.15).densityKgPerM3()).isCloseTo(0.9447, withinPercentage(HAND_PERCENT));
    }
}
