package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NamesTest {
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        Fry, Fry
        Rack B, Rack C
        Fry 3, Fry 4
        Left wall, Left wall 2
        Z, Z 2""")
    void aTakenNameBecomesTheNextInItsRow(String wanted, String unique) {
        assertThat(Names.unique(wanted, Set.of("Rack B", "Fry 3", "Left wall", "Z")))
                .isEqualTo(unique);
    }

    @Test
    void lettersAreFollowedByLettersWithNumbers() {
        Fresh ids = Fresh.of(List.of("B"));
        assertThat(List.of(ids.letter(), ids.letter())).containsExactly("A", "C");
        for (int i = 0; i < 23; i++) {
            ids.letter();
        }
        assertThat(ids.letter()).isEqualTo("A2");
    }

    @Test
    void idsStayShortEnoughForTheFile() {
        String longId = "x".repeat(64);
        String shelf = Fresh.of(List.of()).numbered(longId);
        String tank = Fresh.of(List.of()).numbered(shelf);
        assertThat(Fresh.of(List.of()).lettered(tank).length()).isLessThanOrEqualTo(64);
    }

    @Test
    void anIdIsGivenOnce() {
        Fresh ids = Fresh.of(List.of("main"));
        assertThat(List.of(ids.like("main"), ids.like("main"), ids.numbered("A"), ids.numbered("A")))
                .containsExactly("main-2", "main-3", "A-1", "A-2");
    }
}
