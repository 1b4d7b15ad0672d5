package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;

final class StateMarkTest {
    /** In print all marks are black or grey: what still tells them apart is their shape. */
    private static final Look PRINT = Look.light(DisplayUnits.METRIC).with(Palette.PRINT);

    @Test
    void everyStateHasItsOwnShapeWithoutColour() {
        assertThat(Arrays.stream(OutletState.values()).map(StateMarkTest::shape))
                .doesNotHaveDuplicates();
    }

    @Test
    void everyStateHasItsOwnWord() {
        assertThat(Arrays.stream(OutletState.values()).map(OutletState::word)).doesNotHaveDuplicates();
    }

    /** Where there is ink, whatever its grey. */
    private static String shape(OutletState state) {
        BufferedImage image = Pictures.of(
                (area, look, g) -> StateMark.paint(state, area.getCenterX(), area.getCenterY(), 8, look, g),
                40,
                40,
                PRINT);
        StringBuilder shape = new StringBuilder();
        for (int i = 0; i < 1600; i++) {
            shape.append((image.getRGB(i % 40, i / 40) & 0xFF) < 0xC0 ? '#' : ' ');
        }
        return shape.toString();
    }
}
