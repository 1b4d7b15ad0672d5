package lungfish.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class JsonWriterTest {
    // RFC 8785, appendix B: IEEE 754 bits in hex, and the text
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0000000000000000, 0
        8000000000000000, 0
        7fefffffffffffff, 1.7976931348623157e+308
        4340000000000000, 9007199254740992
        4430000000000000, 295147905179352830000
        44b52d02c7e14af5, 9.999999999999997e+22
        44b52d02c7e14af6, 1e+23
        44b52d02c7e14af7, 1.0000000000000001e+23
        444b1ae4d6e2ef4e, 999999999999999700000
        444b1ae4d6e2ef50, 1e+21
        3eb0c6f7a0b5ed8c, 9.999999999999997e-7
        3eb0c6f7a0b5ed8d, 0.000001
        41b3de4355555555, 333333333.3333333
        becbf647612f3696, -0.0000033333333333333333
        """)
    void numbersAreWrittenAsRfc8785Says(String bits, String text) {
        double x = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(NumberText.of(x)).isEqualTo(text);
    }

    @Property
    void everyFiniteNumberReadsBackAsItself(@ForAll long bits) {
        double x = Double.longBitsToDouble(bits);
        if (Double.isFinite(x)) {
            assertThat(Double.parseDouble(NumberText.of(x))).isEqualTo(x == 0 ? 0.0 : x);
        }
    }

    @Test
    void whatIsNoNumberCannotBeWritten() {
        assertThatIllegalArgumentException().isThrownBy(() -> NumberText.of(Double.NaN));
    }

    @Test
    void theLayoutIsFixed() {
        String text = JsonWriter.text(out -> out.text("name", "Grüße \"x\"")
                .number("depth_m", 3)
                .maybeNumber("width_m", OptionalDouble.empty())
                .maybeText("note", Optional.empty())
                .flatObject("place", inner -> inner.number("x_m", 1.5).number("y_m", 2))
                .object("empty", inner -> {})
                .objects("cups", List.of("a", "b"), (inner, cup) -> inner.text("id", cup))
                .flatObjects("points", List.of(1, 2), (inner, n) -> inner.whole("n", n))
                .maybeObjects("none", List.of(), (inner, n) -> {})
                .texts("serves", List.of("a", "b"))
                .numbers("times_s", new double[] {0, 1800.5})
                .rows("curve", List.of(new double[] {0, 1e-4}, new double[] {500, 0}))
                .nothing("check"));
        assertThat(text)
                .isEqualTo(
                        """
                {
                  "name": "Grüße \\"x\\"",
                  "depth_m": 3,
                  "place": {"x_m": 1.5, "y_m": 2},
                  "empty": {},
                  "cups": [
                    {
                      "id": "a"
                    },
                    {
                      "id": "b"
                    }
                  ],
                  "points": [
                    {"n": 1},
                    {"n": 2}
                  ],
                  "serves": ["a", "b"],
                  "times_s": [0, 1800.5],
                  "curve": [
                    [0, 0.0001],
                    [500, 0]
                  ],
                  "check": null
                }
                """);
    }

    @Test
    void listsOfTextsReadAsList() {
        assertThat(JsonWriter.text(out -> out.texts("none", List.of()))).isEqualTo("{\n  \"none\": []\n}\n");
    }
}
