package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;

/** Pictures as they were looked at and kept: see {@link Golden}. */
final class PicturesTest {
    private static final Plan BASEMENT = DemoPlans.plan("basement-rainbows");
    private static final RoomScene SCENE = RoomScene.of(BASEMENT, Shown.AS_IT_SHOULD_BE_SET);
    private static final Look US = Look.light(DisplayUnits.US);

    @Test
    void theBasementInLight() {
        Golden.check("basement-light", Pictures.room(SCENE, 960, 600, US));
    }

    @Test
    void theBasementInDark() {
        Golden.check("basement-dark", Pictures.room(SCENE, 960, 600, US.with(Palette.DARK)));
    }

    @Test
    void theBasementAsItIsSet() {
        RoomScene asSet = RoomScene.of(BASEMENT, Shown.AS_IT_IS_SET);
        Golden.check("basement-as-set", Pictures.room(asSet, 960, 600, US));
    }

    @Test
    void theGarageInLight() {
        RoomScene garage = RoomScene.of(DemoPlans.plan("garage-killifish"), Shown.AS_IT_SHOULD_BE_SET);
        Golden.check("garage-light", Pictures.room(garage, 960, 600, Look.light(DisplayUnits.METRIC)));
    }

    @Test
    void theFrontOfARack() {
        RackScene rack =
                RackScene.of(SCENE, BASEMENT.room().racks().get(0).id()).orElseThrow();
        Golden.check("rack-front", Pictures.rack(rack, 600, 600, US));
    }

    @Test
    void theCurve() {
        panel("curve", (area, look, g) -> CurvePicture.paint(BASEMENT, area, look, g), 150);
    }

    @Test
    void theHeadroom() {
        panel("headroom", (area, look, g) -> HeadroomPicture.paint(BASEMENT, area, look, g), 60);
    }

    @Test
    void theNoise() {
        panel("noise", (area, look, g) -> NoisePicture.paint(BASEMENT, area, look, g), 90);
    }

    @Test
    void theBackup() {
        panel("backup", (area, look, g) -> BackupPicture.paint(BASEMENT, area, look, g), 96);
    }

    private static void panel(String name, Pictures.Painting painting, int height) {
        Golden.check(name, Pictures.withMargin(painting, 12, 424, height, US));
    }

    @Test
    void theSameRoomGivesTheSamePixels() {
        RoomScene again = RoomScene.of(DemoPlans.plan("basement-rainbows"), Shown.AS_IT_SHOULD_BE_SET);
        assertThat(pixels(Pictures.room(again, 480, 300, US))).isEqualTo(pixels(Pictures.room(SCENE, 480, 300, US)));
    }

    /** Otherwise a golden test would pass on whatever is drawn. */
    @Test
    void oneOutletMoreIsSeen() {
        BufferedImage light = Pictures.room(SCENE, 480, 300, US);
        BufferedImage asSet = Pictures.room(RoomScene.of(BASEMENT, Shown.AS_IT_IS_SET), 480, 300, US);
        assertThat(pixels(asSet)).isNotEqualTo(pixels(light));
    }

    private static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }
}
