package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;

/** Facts about the picture of what the pipe takes on the way to each tap. */
final class TapLossPictureTest {
    /** The line begins and ends so far inside, that a ring has room there. */
    private static final double INSIDE_PX = 4.6;

    private static final int WIDE = 107;
    private static final int HIGH = 16;
    private static final double LINE_PX = WIDE - 2 * INSIDE_PX;

    private static BufferedImage painted(Look look, Double... lossesPa) {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(look.palette().sheet());
        g.fillRect(0, 0, WIDE, HIGH);
        TapLossPicture.paint(List.of(lossesPa), 100, new Rectangle2D.Double(0, 0, WIDE, HIGH), look, g);
        g.dispose();
        return image;
    }

    /** The rightmost column with something as dark as ink three pixels above the line: a ring's top. */
    private static int ring(BufferedImage image, Look look) {
        return IntStream.range(10, WIDE)
                .filter(x -> contrast(image.getRGB(x, HIGH / 2 - 3), look) > 3)
                .max()
                .orElse(-1);
    }

    private static double contrast(int rgb, Look look) {
        return Palette.contrast(new Color(rgb), look.palette().sheet());
    }

    @Test
    void theRingStandsWhereTheWorstTapIs() {
        Look look = Look.light(DisplayUnits.METRIC);

        // half of the axis, and its end: the middle of the ring is 3 px or less from the dark pixel on its top
        assertThat(ring(painted(look, 10.0, 50.0), look)).isBetween(mark(50) - 3, mark(50) + 3);
        assertThat(ring(painted(look, 10.0, 100.0), look)).isBetween(mark(100) - 3, mark(100) + 3);
    }

    private static int mark(double lossPa) {
        return (int) Math.round(INSIDE_PX + LINE_PX * lossPa / 100);
    }

    @Test
    void nothingIsPaintedBeyondItsEnds() {
        Look look = Look.light(DisplayUnits.METRIC);
        BufferedImage image = painted(look, 0.0, 100.0);

        for (int y = 0; y < HIGH; y++) {
            assertThat(contrast(image.getRGB(WIDE - 1, y), look)).isLessThan(1.2);
        }
    }

    @Test
    void inTheDarkItIsAsPlain() {
        Look dark = Look.light(DisplayUnits.METRIC).with(Palette.DARK);

        assertThat(ring(painted(dark, 10.0, 50.0), dark)).isBetween(mark(50) - 3, mark(50) + 3);
    }
}
