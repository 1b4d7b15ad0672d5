package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Facts about the order of names. */
final class NaturalOrderTest {
    @Test
    void numbersInNamesCountAsNumbers() {
        List<String> names = new ArrayList<>(List.of("C-10-a", "C-2-b", "c-2-a", "B-30"));
        names.sort(NaturalOrder.OF_NAMES);
        assertThat(names).containsExactly("B-30", "c-2-a", "C-2-b", "C-10-a");
    }

    @Test
    void aNumberOfAnyLengthIsOrdered() {
        assertThat(NaturalOrder.OF_NAMES.compare("a99999999999999999999", "a100000000000000000000"))
                .isNegative();
    }
}
