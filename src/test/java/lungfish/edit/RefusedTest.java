package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import org.junit.jupiter.api.Test;

final class RefusedTest {
    private static final Refused SHORT = Refused.because(
            "It would end {end} from the left, beyond {most}.",
            "Take a shorter tank.",
            Refused.length("end", 1.27),
            Refused.length("most", 1.016));

    @Test
    void itsNumbersAreInTheReadersUnits() {
        assertThat(SHORT.sentence(Quantities.in(DisplayUnits.METRIC)))
                .isEqualTo("It would end 127 cm from the left, beyond 102 cm. Take a shorter tank.");
        // 1.27 m is 50 in, 1.016 m is 40 in, at 25.4 mm
        assertThat(SHORT.sentence(Quantities.in(DisplayUnits.US)))
                .isEqualTo("It would end 50 in from the left, beyond 40 in. Take a shorter tank.");
    }

    @Test
    void itIsNoEdit() {
        assertThat(SHORT.edit()).isEmpty();
        assertThat(SHORT.refused()).hasValue(SHORT);
        assertThat(new Edit("Nothing", room -> room).refused()).isEmpty();
    }
}
