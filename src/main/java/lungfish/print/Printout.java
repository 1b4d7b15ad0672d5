package lungfish.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * Pages that belong together.
 *
 * @param title what a reader of the PDF and the queue of the printer call it
 */
public record Printout(String title, List<PrintedPage> pages) {
    private static final double PT_PER_INCH = 72;

    public Printout {
        pages = List.copyOf(pages);
    }

    /** A page as a picture with so many pixels an inch. */
    public BufferedImage picture(int page, double dotsPerInch) {
        PrintedPage shown = pages.get(page);
        double scale = dotsPerInch / PT_PER_INCH;
        int width = (int) Math.ceil(shown.paper().widthPt() * scale);
        int height = (int) Math.ceil(shown.paper().heightPt() * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.scale(scale, scale);
        shown.paint(g);
        g.dispose();
        return image;
    }
}
