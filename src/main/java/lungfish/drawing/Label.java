package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * Words that have found their place on a drawing.
 *
 * @param box of the line of text
 * @param leader from what is named to the words, where they do not stand beside it
 */
record Label(String text, Rectangle2D box, Font font, Color colour, Optional<Path2D> leader) {
    private static final int VEIL = 215; // of 255: where nothing was free, words stay readable

    void veil(Ink ink) {
        Color sheet = ink.palette().sheet();
        ink.fill(Marks.outset(box, ink.px(1)), new Color(sheet.getRed(), sheet.getGreen(), sheet.getBlue(), VEIL));
    }

    void lead(Ink ink) {
        leader.ifPresent(line -> ink.draw(line, colour, 1.2));
    }

    void write(Ink ink) {
        ink.textIn(text, box, font, colour);
    }
}
