package lungfish.cost;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class UpkeepTest {
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # rebuilt every 4 of 12 years: at 4 and 8, not at 12; replaced at 12; what is due at the very end is not counted; by hand
        0, 0, 0
        4, 0, 0
        4.01, 1, 0
        8, 1, 0
        11.9, 2, 0
        12, 2, 0
        12.01, 2, 1
        16.01, 3, 1
        25, 4, 2
        """)
    void aMachineIsRebuiltThroughItsLifeAndThenReplaced(double years, long rebuilds, long replacements) {
        Upkeep upkeep = new Upkeep(4, 12);
        assertThat(upkeep.rebuilds(years)).isEqualTo(rebuilds);
        assertThat(upkeep.replacements(years)).isEqualTo(replacements);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # rebuilt every 1.5 of 4 years: at 1.5 and 3, then anew from 4; by hand
        1.4, 0, 0
        3.01, 2, 0
        4, 2, 0
        4.01, 2, 1
        5.51, 3, 1
        8, 4, 1
        """)
    void theIntervalBeginsAnewWithTheNewMachine(double years, long rebuilds, long replacements) {
        Upkeep upkeep = new Upkeep(1.5, 4);
        assertThat(upkeep.rebuilds(years)).isEqualTo(rebuilds);
        assertThat(upkeep.replacements(years)).isEqualTo(replacements);
    }
}
