package lungfish.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lungfish.catalogue.BatteryClass.Chemistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WarmthTest {
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # IEEE Std 485, Table 1, °F: between its rows a straight line (45 and 50: 1.25 and 1.19), beyond them the last
        47.5, 1.22
        77,   1.0
        0,    1.52
        140,  0.86
        """)
    void betweenTheRowsOfTheTableRunsAStraightLine(double fahrenheit, double factor) {
        assertThat(Warmth.leadAcidSizeFactor((fahrenheit - 32) / 1.8 + 273.15)).isCloseTo(factor, within(ROUNDING));
    }

    /** By hand, between 0.85 at 0 °C and 1 at 25 °C. */
    @Test
    void lithiumLosesLittleInTheCold() {
        assertThat(Warmth.ironPhosphateShare(273.15 + 12.5)).isCloseTo(0.925, within(ROUNDING));
        assertThat(Warmth.ironPhosphateShare(233)).isEqualTo(0.6);
        assertThat(Warmth.ironPhosphateShare(313)).isEqualTo(1);
    }

    @Test
    void whatAWarmBatteryGivesBeyondItsRatingIsNotCounted() {
        assertThat(Warmth.share(Chemistry.LEAD_ACID_SEALED, 310)).isEqualTo(1);
        assertThat(Warmth.share(Chemistry.LEAD_ACID_FLOODED, 283.15)).isCloseTo(1 / 1.19, within(ROUNDING));
    }
}
