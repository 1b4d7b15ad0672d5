package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Spread;
import lungfish.sure.Band;
import lungfish.sure.Odds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SureWordsTest {
    private final SureWords words = new SureWords(Quantities.in(DisplayUnits.METRIC));

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        1000, 1000, more than 99 in 100
        999,  1000, 99 in 100
        945,  1000, 95 in 100
        1,    1000, 1 in 100
        0,    1000, less than 1 in 100
        9,    10,   90 in 100""")
    void oddsAreNeverAllOrNoneOfAHundred(int holds, int of, String said) {
        assertThat(SureWords.odds(new Odds(holds, of))).isEqualTo(said);
    }

    /** By E. B. Wilson all of n are 99 in 100 or more from n / (n + 3.8415) = 0.99 on: 381 are enough, 380 are not. */
    @ParameterizedTest
    @CsvSource({
        "10, 10, all of 10",
        "0, 10, none of 10",
        "380, 380, all of 380",
        "381, 381, more than 99 in 100",
        "0, 380, none of 380",
        "0, 381, less than 1 in 100"
    })
    void whereFewWereLookedAtItIsSaidHowMany(int holds, int of, String said) {
        assertThat(SureWords.odds(new Odds(holds, of))).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({"1000, 1000, 20", "999, 1000, 19", "945, 1000, 19", "1, 1000, 1", "0, 1000, 0"})
    void aDotIsLeftOpenWhereAnyRoomFails(int holds, int of, int filled) {
        assertThat(SureWords.outOf(new Odds(holds, of), 20)).isEqualTo(filled);
    }

    @Test
    void theUnitIsSaidOnceWhereBothEndsHaveIt() {
        assertThat(words.band(new Band(8400, 9000, 13_600, 8750), Dimension.PRESSURE))
                .isEqualTo("8.40 to 13.6 kPa");
        assertThat(words.band(new Band(2.6, 12.4, 21.5, 17), Dimension.COUNT)).isEqualTo("3 to 22");
    }

    @Test
    void everyInputHasANameAndAnAdviceOfItsOwn() {
        assertThat(Arrays.stream(Spread.values()).map(SureWords::name)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(Spread.values()).map(SureWords::advice))
                .doesNotHaveDuplicates()
                .allMatch(advice -> advice.endsWith(".") || advice.endsWith("?"));
    }
}
