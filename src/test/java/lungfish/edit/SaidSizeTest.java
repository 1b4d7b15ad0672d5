package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Tank;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SaidSizeTest {
    private static final Quantities METRIC = Quantities.in(DisplayUnits.METRIC);

    /** An inch is 0.0254 m. */
    @ParameterizedTest
    @CsvSource({
        "60x30x36 cm, 0.6, 0.3, 0.36",
        "60 X 30 X 36cm, 0.6, 0.3, 0.36",
        "600 mm × 30 cm × 0.36 m, 0.6, 0.3, 0.36",
        "10 * 20 * 30 in, 0.254, 0.508, 0.762"
    })
    void threeSidesInOneCellAreASize(String text, double lengthM, double widthM, double heightM) {
        assertThat(SaidSize.of(text, METRIC)).contains(new Tank.Size(lengthM, widthM, heightM));
    }

    @ParameterizedTest
    @ValueSource(strings = {"60 x 30 cm", "20 gal long", "a x b x c", "60 x 0 x 30 cm", ""})
    void anythingElseIsNone(String text) {
        assertThat(SaidSize.of(text, METRIC)).isEmpty();
    }
}
