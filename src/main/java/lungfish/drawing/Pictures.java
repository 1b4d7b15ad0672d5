package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Renders whatever paints into an area as a picture; the same input gives the same pixels. */
public final class Pictures {
    /** Something that fills an area. */
    @FunctionalInterface
    public interface Painting {
        void paint(Rectangle2D area, Look look, Graphics2D g);
    }

    private Pictures() {}

    /** The painting on a sheet of this size, pixels. */
    public static BufferedImage of(Painting painting, int width, int height, Look look) {
        return withMargin(painting, 0, width, height, look);
    }

    /** The painting on a sheet of this size, this far from its edges. */
    public static BufferedImage withMargin(Painting painting, double margin, int width, int height, Look look) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        g.setClip(0, 0, width, height);
        g.setColor(look.palette().sheet());
        g.fillRect(0, 0, width, height);
        Rectangle2D area = new Rectangle2D.Double(margin, margin, width - 2 * margin, height - 2 * margin);
        painting.paint(area, look, g);
        g.dispose();
        return image;
    }

    /** The whole room with title and legend. */
    public static BufferedImage room(RoomScene scene, int width, int height, Look look) {
        return of((area, as, g) -> RoomSheet.paint(scene, area, Marked.NOTHING, as, g), width, height, look);
    }

    /** The front of a rack with its ruler of heights. */
    public static BufferedImage rack(RackScene scene, int width, int height, Look look) {
        return of((area, as, g) -> RackSheet.paint(scene, area, Marked.NOTHING, as, g), width, height, look);
    }
}
