package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import lungfish.quantity.DisplayUnits;
import lungfish.sure.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the marks of bands, odds and weights are. */
final class SurePicturesTest {
    private static final Look LOOK = Look.light(DisplayUnits.METRIC);

    /** So wide that 100 units and the room beyond them are 2 pixels a unit, with a pixel at each end. */
    private static final int WIDTH = 214;

    /** The line of a row is 26 pixels below its top. */
    private static final int LINE_Y = 26;

    /** 20 dots of 13 pixels, 27 pixels below the top of their row. */
    private static final int DOT = 13;

    private static final int DOTS_Y = 27;

    private static BufferedImage bands(Band band) {
        List<BandsPicture.Row> rows = List.of(new BandsPicture.Row("", band, "", "", ""));
        return Pictures.of(
                (area, look, g) -> BandsPicture.paint(rows, area, look, g),
                WIDTH,
                (int) BandsPicture.height(1, LOOK),
                LOOK);
    }

    private static Color at(BufferedImage image, int x, int y) {
        return new Color(image.getRGB(x, y));
    }

    @Test
    void theBarGoesFromTheLowToTheHighEndAndThePlanIsATallTick() {
        BufferedImage image = bands(new Band(40, 60, 100, 80));

        assertThat(at(image, 1 + 2 * 50, LINE_Y)).isEqualTo(LOOK.palette().waterFill());
        assertThat(at(image, 1 + 2 * 95, LINE_Y + 2)).isEqualTo(LOOK.palette().waterFill());
        assertThat(at(image, 1 + 2 * 60, LINE_Y)).isEqualTo(LOOK.palette().air());
        assertThat(at(image, 2 * 80, LINE_Y - 7)).isEqualTo(LOOK.palette().accent());
        assertThat(at(image, 1 + 2 * 35, LINE_Y + 2))
                .isNotEqualTo(LOOK.palette().waterFill());
        assertThat(at(image, 1 + 2 * 104, LINE_Y + 2))
                .isNotEqualTo(LOOK.palette().waterFill());
    }

    @Test
    void aBandThatIsAllNothingIsStillDrawn() {
        assertThat(bands(new Band(0, 0, 0, 0)).getWidth()).isEqualTo(WIDTH);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 13, 20})
    void soManyOfTwentyDotsAreFilled(int filled) {
        List<OddsPicture.Row> rows = List.of(new OddsPicture.Row("", "", "", filled, false));
        BufferedImage image = Pictures.of(
                (area, look, g) -> OddsPicture.paint(rows, area, look, g),
                20 * DOT,
                (int) OddsPicture.height(1, LOOK),
                LOOK);

        int full = 0;
        for (int i = 0; i < OddsPicture.DOTS; i++) {
            full += at(image, i * DOT + DOT / 2, DOTS_Y).equals(LOOK.palette().air()) ? 1 : 0;
        }
        assertThat(full).isEqualTo(filled);
    }

    @Test
    void aBarIsAsLongAsItsShareOfTheLongest() {
        List<WeightsPicture.Row> rows =
                List.of(new WeightsPicture.Row("", 0.6, ""), new WeightsPicture.Row("", 0.3, ""));
        BufferedImage image = Pictures.of(
                (area, look, g) -> WeightsPicture.paint(rows, area, look, g),
                200,
                (int) WeightsPicture.height(2, LOOK),
                LOOK);

        int second = (int) WeightsPicture.height(1, LOOK) + 23;
        assertThat(at(image, 198, 23)).isEqualTo(LOOK.palette().accent());
        assertThat(at(image, 98, second)).isEqualTo(LOOK.palette().waterEdge());
        assertThat(at(image, 102, second)).isNotEqualTo(LOOK.palette().waterEdge());
    }
}
