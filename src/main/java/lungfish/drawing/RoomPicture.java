package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** The room with its title and its legend, to be shown to others: light, as the window shows it. */
public final class RoomPicture {
    private static final int WIDE_PX = 1600;
    private static final int LEAST_HIGH_PX = 700;
    private static final int MOST_HIGH_PX = 2000;
    private static final int AROUND_PX = 240;

    private RoomPicture() {}

    /** What paints it. */
    public static FigurePainter.Fitted of(Plan plan, Quantities quantities) {
        RoomScene scene = RoomScene.of(plan, Shown.AS_IT_SHOULD_BE_SET);
        Look look = new Look(Palette.LIGHT, Type.NORMAL, quantities);
        return new FigurePainter.Fitted(
                WIDE_PX,
                high(scene),
                Optional.empty(),
                (area, g) -> RoomSheet.paint(scene, area, Marked.NOTHING, look, g));
    }

    private static int high(RoomScene scene) {
        Rectangle2D bounds = scene.boundsM();
        double high = AROUND_PX + (WIDE_PX - AROUND_PX) * bounds.getHeight() / bounds.getWidth();
        return (int) Math.min(MOST_HIGH_PX, Math.max(LEAST_HIGH_PX, high));
    }

    /** As pixels, for the clipboard. */
    public static BufferedImage image(Plan plan, Quantities quantities) {
        RoomScene scene = RoomScene.of(plan, Shown.AS_IT_SHOULD_BE_SET);
        return Pictures.room(scene, WIDE_PX, high(scene), new Look(Palette.LIGHT, Type.NORMAL, quantities));
    }

    /** As a PNG file. */
    public static byte[] png(Plan plan, Quantities quantities) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(plan, quantities), "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // nothing but memory is written
        }
        return bytes.toByteArray();
    }
}
