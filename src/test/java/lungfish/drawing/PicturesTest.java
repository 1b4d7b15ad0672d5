package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;
import java.util.Set;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;
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

    /** Rack A and its first outlet are chosen, the loop is under the pointer. */
    @Test
    void theBasementWithMarks() {
        RackScene rack =
                RackScene.of(SCENE, BASEMENT.room().racks().get(0).id()).orElseThrow();
        Marked marked = new Marked(
                Set.of(rack.rack().id().part(), rack.outlets().get(0).outlet().part()),
                Optional.of(BASEMENT.room().runs().get(0).id().part()));
        Pictures.Painting painting = (area, look, g) -> RoomSheet.paint(SCENE, area, marked, look, g);
        Golden.check("basement-marked", Pictures.of(painting, 960, 600, US));
    }

    @Test
    void aCandidateThatServes() {
        candidate("candidate-serves", BASEMENT.candidates().get(0));
    }

    @Test
    void aCandidateThatDoesNot() {
        candidate(
                "candidate-fails",
                BASEMENT.candidates().get(BASEMENT.candidates().size() - 1));
    }

    private static void candidate(String name, Candidate candidate) {
        Needed needed = BASEMENT.duty().orElseThrow().needed();
        Pictures.Painting painting = (area, look, g) -> CandidatePicture.paint(candidate, needed, area, look, g);
        Golden.check(name, Pictures.withMargin(painting, 4, 92, 54, US));
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
