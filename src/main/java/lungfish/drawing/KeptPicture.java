package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A picture that is painted once and kept, at the resolution of the screen, until something that it shows is another. It
 * fills its place, and is as large as that is: one is kept, not many.
 */
public final class KeptPicture {
    private record Kept(List<Object> shows, BufferedImage image) {}

    private final int type;
    private Optional<Kept> kept = Optional.empty();

    private KeptPicture(int type) {
        this.type = type;
    }

    /** One that fills its place. */
    public KeptPicture() {
        this(BufferedImage.TYPE_INT_RGB);
    }

    /** One through which what was painted before is seen, where nothing is painted. */
    public static KeptPicture clear() {
        return new KeptPicture(BufferedImage.TYPE_INT_ARGB);
    }

    /**
     * Brings the picture to the screen, from the point 0, 0 on.
     *
     * @param shows all that decides how it looks, things with a true equality; of scenes each one is another
     * @param painting fills the whole picture, its ground too, unless it is a clear one
     */
    public void paint(int width, int height, List<Object> shows, Consumer<Graphics2D> painting, Graphics2D g) {
        AffineTransform screen = g.getTransform();
        int wide = (int) Math.ceil(width * screen.getScaleX());
        int high = (int) Math.ceil(height * screen.getScaleY());
        if (wide <= 0 || high <= 0) {
            return;
        }
        BufferedImage image = kept.filter(each -> each.shows().equals(shows))
                .map(Kept::image)
                .filter(each -> each.getWidth() == wide && each.getHeight() == high)
                .orElseGet(() -> painted(wide, high, screen, painting));
        kept = Optional.of(new Kept(List.copyOf(shows), image));
        g.setTransform(AffineTransform.getTranslateInstance(
                Math.rint(screen.getTranslateX()), Math.rint(screen.getTranslateY())));
        g.drawImage(image, 0, 0, null);
        g.setTransform(screen);
    }

    private BufferedImage painted(int wide, int high, AffineTransform screen, Consumer<Graphics2D> painting) {
        BufferedImage image = new BufferedImage(wide, high, type);
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, wide, high);
        g.scale(screen.getScaleX(), screen.getScaleY());
        painting.accept(g);
        g.dispose();
        return image;
    }
}
