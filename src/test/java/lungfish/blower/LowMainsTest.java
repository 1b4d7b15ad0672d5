package lungfish.blower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts about machines on mains a tenth low: 100 L/min open and 20 kPa shut with all their voltage. */
final class LowMainsTest {
    private static final double L_PER_MIN = 1e-3 / 60;

    /** Five figures by hand. */
    private static final double BY_HAND = 1e-4;

    /**
     * Linear: flow 0.9; pressure 0.9 with permanent magnets, 0.81 with soft iron. Induction: slip 0.06 becomes 0.06/0.81 =
     * 0.074074, speed 0.925926/0.94 = 0.985028; its square 0.970280.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        LINEAR_DIAPHRAGM, 90.000, 18000.0
        SMALL_DIAPHRAGM,  90.000, 18000.0
        LINEAR_PISTON,    90.000, 16200.0
        SMALL_PISTON,     90.000, 16200.0
        SIDE_CHANNEL,     98.503, 19405.6
        ROTARY_VANE,      98.503, 20000.0""")
    void openFlowAndShutPressureGoAsTheKindOfMachineSays(Kind kind, double openLPerMin, double shutPa) {
        BlowerClass full = MachineTest.straight("s", kind);
        BlowerClass low = LowMains.of(full);

        assertThat(low.openM3PerS() / L_PER_MIN).isCloseTo(openLPerMin, within(BY_HAND * openLPerMin));
        assertThat(low.points().get(1).gaugePa()).isCloseTo(shutPa, within(BY_HAND * shutPa));
        assertThat(low.continuousPa()).isEqualTo(full.continuousPa());
        assertThat(low.tiredShare()).isEqualTo(full.tiredShare());
    }
}
