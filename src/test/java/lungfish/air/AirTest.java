package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirTest {
    private static final double TABLE_ROUNDING_PERCENT = 0.01;

    @Test
    void seaLevelAirWeighsWhatTheStandardAtmosphereSays() {
        // US Standard Atmosphere 1976, Table I: 1.2250 kg/m³ at 1013.25 hPa and 288.15 K
        assertThat(Air.densityKgPerM3(101325.0, 288.15)).isCloseTo(1.2250, withinPercentage(TABLE_ROUNDING_PERCENT));
    }

    @Test
    void seaLevelAirIsAsViscousAsTheStandardAtmosphereSays() {
        // US Standard Atmosphere 1976, Table III: 1.7894e-5 Pa s at 288.15 K
        assertThat(Air.viscosityPaS(288.15)).isCloseTo(1.7894e-5, withinPercentage(TABLE_ROUNDING_PERCENT));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # ISO 2533 / US Standard Atmosphere 1976, geopotential altitude
        0, 101325
        1000, 89874
        2000, 79495""")
    void pressureFallsWithAltitudeAsInTheStandardAtmosphere(double altitudeM, double pressurePa) {
        assertThat(Atmosphere.pressurePa(altitudeM)).isCloseTo(pressurePa, withinPercentage(TABLE_ROUNDING_PERCENT));
    }
}
