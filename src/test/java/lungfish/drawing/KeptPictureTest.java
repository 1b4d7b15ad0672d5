package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import lungfish.plan.DemoPlans;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class KeptPictureTest {
    private static final int WIDE = 320;
    private static final int HIGH = 200;
    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, WIDE, HIGH);
    private static final Look LOOK = Look.light(DisplayUnits.US);
    private static final RoomScene SCENE = RoomScene.of(DemoPlans.plan("basement-rainbows"), Shown.AS_IT_SHOULD_BE_SET);
    private static final Viewport VIEW = Viewport.fit(SCENE.boundsM(), FRAME);

    private final KeptPicture kept = new KeptPicture();
    private int painted;

    private static void room(Graphics2D g) {
        g.setColor(LOOK.palette().sheet());
        g.fillRect(0, 0, WIDE, HIGH);
        RoomPainter.unmarked(SCENE, VIEW, FRAME, LOOK, g);
    }

    /** Screens of 100, 125 and 200 %. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 2})
    void whatIsKeptIsWhatWouldBePainted(double scale) {
        BufferedImage direct = image(scale);
        Graphics2D g = scaled(direct, scale);
        g.setClip(0, 0, WIDE, HIGH);
        room(g);
        BufferedImage first = image(scale);
        kept.paint(WIDE, HIGH, List.of(SCENE), KeptPictureTest::room, scaled(first, scale));
        BufferedImage again = image(scale);
        kept.paint(WIDE, HIGH, List.of(SCENE), KeptPictureTest::room, scaled(again, scale));
        assertThat(pixels(first)).isEqualTo(pixels(direct));
        assertThat(pixels(again)).isEqualTo(pixels(direct));
    }

    private static BufferedImage image(double scale) {
        return new BufferedImage((int) (scale * WIDE), (int) (scale * HIGH), BufferedImage.TYPE_INT_RGB);
    }

    private static Graphics2D scaled(BufferedImage image, double scale) {
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        return g;
    }

    private static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    private void paint(Object shows, double scale) {
        kept.paint(WIDE, HIGH, List.of(shows), g -> painted++, scaled(image(scale), scale));
    }

    @Test
    void itIsPaintedOnceWhileItShowsTheSame() {
        paint("room", 1);
        paint("room", 1);
        assertThat(painted).isEqualTo(1);
    }

    @Test
    void itIsPaintedAgainForAnotherThingToShow() {
        paint("room", 1);
        paint("other room", 1);
        assertThat(painted).isEqualTo(2);
    }

    @Test
    void itIsPaintedAgainForAnotherScreen() {
        paint("room", 1);
        paint("room", 2);
        assertThat(painted).isEqualTo(2);
    }

    @Test
    void itLiesWhereTheGraphicsBegin() {
        BufferedImage image = image(2);
        Graphics2D g = image.createGraphics();
        g.translate(100, 50);
        kept.paint(10, 10, List.of(), KeptPictureTest::red, g);
        assertThat(new Color(image.getRGB(105, 55))).isEqualTo(Color.RED);
        assertThat(new Color(image.getRGB(95, 55))).isEqualTo(Color.BLACK);
        assertThat(new Color(image.getRGB(111, 55))).isEqualTo(Color.BLACK);
    }

    private static void red(Graphics2D g) {
        g.setColor(Color.RED);
        g.fillRect(0, 0, 10, 10);
    }
}
