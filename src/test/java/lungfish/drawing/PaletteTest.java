package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class PaletteTest {
    /** Web Content Accessibility Guidelines 2.1, success criterion 1.4.3. */
    private static final double TEXT = 4.5;

    /** The same, success criterion 1.4.11: marks that are no text. */
    private static final double MARK = 3.0;

    static Stream<Palette> palettes() {
        return Stream.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
    }

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(Palette.contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
    }

    /** #767676 on white is known as the lightest grey that passes: 4.54 (W3C, Understanding SC 1.4.3; from memory). */
    @Test
    void theLightestGreyThatPassesIsFourAndAHalf() {
        assertThat(Palette.contrast(new Color(0x767676), Color.WHITE)).isBetween(4.5, 4.6);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void everyTextStandsOutFromPaperAndSheet(Palette palette) {
        for (Color ground : List.of(palette.paper(), palette.sheet())) {
            for (Color text :
                    List.of(palette.ink(), palette.softInk(), palette.accent(), palette.planned(), palette.air())) {
                assertThat(Palette.contrast(text, ground))
                        .as("%s on %s", text, ground)
                        .isGreaterThanOrEqualTo(TEXT);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void namesStandOutFromWaterAndBlocksAndChosenRows(Palette palette) {
        assertThat(Palette.contrast(palette.ink(), palette.waterFill())).isGreaterThanOrEqualTo(TEXT);
        assertThat(Palette.contrast(palette.sheet(), palette.ink())).isGreaterThanOrEqualTo(TEXT);
        assertThat(Palette.contrast(palette.accent(), palette.accentSoft())).isGreaterThanOrEqualTo(TEXT);
        assertThat(Palette.contrast(palette.ink(), palette.accentSoft())).isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void marksStandOutFromWhatTheyLieOn(Palette palette) {
        assertThat(Palette.contrast(palette.air(), palette.waterFill())).isGreaterThanOrEqualTo(MARK);
        assertThat(Palette.contrast(palette.accent(), palette.waterFill())).isGreaterThanOrEqualTo(MARK);
        assertThat(Palette.contrast(palette.good(), palette.sheet())).isGreaterThanOrEqualTo(MARK);
        assertThat(Palette.contrast(palette.free(), palette.sheet())).isGreaterThanOrEqualTo(MARK);
    }

    @Test
    void printUsesNoColour() {
        assertThat(List.of(
                        Palette.PRINT.ink(),
                        Palette.PRINT.softInk(),
                        Palette.PRINT.waterEdge(),
                        Palette.PRINT.air(),
                        Palette.PRINT.accent(),
                        Palette.PRINT.good(),
                        Palette.PRINT.planned()))
                .allMatch(colour -> colour.getRed() == colour.getGreen() && colour.getGreen() == colour.getBlue());
    }
}
