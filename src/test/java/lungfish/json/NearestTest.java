package lungfish.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NearestTest {
    private static final List<String> NAMES = List.of("main", "branch", "water_depth_m", "depth_m");

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        mian,          main
        man,           main
        mains,         main
        branhc,        branch
        water_dept_m,  water_depth_m
        depthm,        depth_m
        """)
    void aSlipOfTheFingersIsUnderstood(String written, String meant) {
        assertThat(Nearest.of(written, NAMES)).contains(meant);
    }

    @Test
    void anotherWordIsNotTakenForOneOfThem() {
        assertThat(Nearest.of("riser", NAMES)).isEmpty();
        assertThat(Nearest.offer("riser", NAMES)).isEqualTo("one of main, branch, water_depth_m, depth_m");
    }

    @Test
    void whereNothingIsDefinedThatIsSaid() {
        assertThat(Nearest.offer("main", List.of())).isEqualTo("one of those defined in this file, and there are none");
    }
}
