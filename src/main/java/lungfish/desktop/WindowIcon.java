package lungfish.desktop;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import lungfish.drawing.Palette;

/** The sign of the program: bubbles that rise in water. */
final class WindowIcon {
    private static final List<Integer> SIZES_PX = List.of(16, 24, 32, 48, 64, 128);

    private WindowIcon() {}

    static List<Image> sizes() {
        return SIZES_PX.stream().<Image>map(WindowIcon::of).toList();
    }

    private static BufferedImage of(int px) {
        BufferedImage image = new BufferedImage(px, px, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(px / 16.0, px / 16.0);
        g.setColor(Palette.LIGHT.air());
        g.fill(new RoundRectangle2D.Double(0.5, 0.5, 15, 15, 5, 5));
        g.setColor(Color.WHITE);
        g.fill(new Ellipse2D.Double(3.2, 9, 4.2, 4.2));
        g.fill(new Ellipse2D.Double(8.2, 5.6, 3.2, 3.2));
        g.fill(new Ellipse2D.Double(5.6, 2.4, 2.2, 2.2));
        g.dispose();
        return image;
    }
}
