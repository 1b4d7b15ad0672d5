package lungfish.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TapeTest {
    /** 1.4 m are 55.118 in: 4 ft 7 1/8 in; 0.1 m 3.937 in: 3 15/16; 0.3 m 11.811 in: 11 13/16; 15.24 m are 50 ft. */
    @ParameterizedTest
    @CsvSource({
        "1.4, 1400 mm, 4 ft 7 1/8 in",
        "0.1, 100 mm, 3 15/16 in",
        "0.3, 300 mm, 11 13/16 in",
        "0.0127, 13 mm, 1/2 in",
        "15.24, 15240 mm, 50 ft",
        "0, 0 mm, 0 in"
    })
    void aTapeReadsMillimetresOrSixteenths(double m, String metric, String us) {
        assertThat(Quantities.in(DisplayUnits.METRIC).tape(m)).isEqualTo(metric);
        assertThat(Quantities.in(DisplayUnits.US).tape(m)).isEqualTo(us);
    }
}
