package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;

/** Where the bars and squares of redundancy are. */
final class StandingPictureTest {
    private static final Look LOOK = Look.light(DisplayUnits.METRIC);
    private static final int WIDTH = 200;

    /** The legend is 42 pixels high; a bar of 11 begins 22 pixels below the top of its row, squares of 9 55 below it. */
    private static final int BAR_Y = 42 + 22 + 5;

    private static final int SQUARE_Y = 42 + 55 + 4;

    /** 9 pixels and 3 to the next. */
    private static final int STEP = 12;

    @Test
    void theBarIsFullByMachinesAndOpenByTheMains() {
        BufferedImage image = picture(row(100, 50, 0, 0, 4), row(50, 50, 0, 0, 4));

        // The longest, 150, takes all 200 pixels: by machines to 133, by the mains from there.
        assertThat(at(image, 5, BAR_Y)).isEqualTo(LOOK.palette().air());
        assertThat(at(image, 130, BAR_Y)).isEqualTo(LOOK.palette().air());
        assertThat(at(image, 160, BAR_Y)).isEqualTo(LOOK.palette().sheet());
        assertThat(at(image, 160, BAR_Y - 5)).isNotEqualTo(LOOK.palette().sheet());
    }

    @Test
    void aSquareIsFullForATankWithoutAirHalfFullForOneWithLessAndOpenForTheOthers() {
        BufferedImage image = picture(row(1, 1, 1, 1, 3));

        assertThat(at(image, 4, SQUARE_Y - 2)).isEqualTo(LOOK.palette().ink());
        assertThat(at(image, STEP + 4, SQUARE_Y - 2)).isEqualTo(LOOK.palette().sheet());
        assertThat(at(image, STEP + 4, SQUARE_Y + 2)).isEqualTo(LOOK.palette().ink());
        assertThat(at(image, 2 * STEP + 4, SQUARE_Y + 2))
                .isEqualTo(LOOK.palette().sheet());
    }

    /** 300 squares of 7 pixels each: 28 fit in a row of 200, so they stand in 11 rows. */
    @Test
    void manyTanksStandInRows() {
        double few = StandingPicture.height(List.of(row(1, 1, 0, 0, 1)), WIDTH, LOOK);
        double many = StandingPicture.height(List.of(row(1, 1, 0, 0, 300)), WIDTH, LOOK);
        assertThat(many - few).isEqualTo(11 * 7 - STEP);
    }

    @Test
    void aRoomWhereNothingFailsIsStillDrawn() {
        assertThat(picture(row(0, 0, 0, 0, 0)).getWidth()).isEqualTo(WIDTH);
    }

    private static StandingPicture.Row row(double machinesS, double mainsS, int lost, int less, int of) {
        return new StandingPicture.Row("", "", machinesS, mainsS, lost, less, of, "");
    }

    private static BufferedImage picture(StandingPicture.Row... rows) {
        List<StandingPicture.Row> those = List.of(rows);
        return Pictures.of(
                (area, look, g) -> StandingPicture.paint(those, area, look, g),
                WIDTH,
                (int) StandingPicture.height(those, WIDTH, LOOK),
                LOOK);
    }

    private static Color at(BufferedImage image, int x, int y) {
        return new Color(image.getRGB(x, y));
    }
}
