package lungfish.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/**
 * The type: one bundled family in four sizes, larger as the reader wishes. Strokes and marks grow with it, so that a
 * drawing at 200 % is the same drawing.
 *
 * @param scale 1 is 100 %; 1 to 2 is meant
 */
public record Type(double scale) {
    private static final Font REGULAR = bundled("Inter-Regular.otf", Font.PLAIN);
    private static final Font SEMI_BOLD = bundled("Inter-SemiBold.otf", Font.BOLD);

    public static final Type NORMAL = new Type(1);

    /** Headlines, 24. */
    public Font headline() {
        return at(SEMI_BOLD, 24);
    }

    /** Running text, 13. */
    public Font body() {
        return at(REGULAR, 13);
    }

    /** Names and titles beside text, 12, semi-bold. */
    public Font label() {
        return at(SEMI_BOLD, 12);
    }

    /** What stands on a drawing, 11. */
    public Font drawing() {
        return at(REGULAR, 11);
    }

    /** Names on a drawing, 11, semi-bold. */
    public Font drawingName() {
        return at(SEMI_BOLD, 11);
    }

    /** So many pixels at 100 %, here. */
    public double px(double atNormal) {
        return atNormal * scale;
    }

    private Font at(Font font, double size) {
        return font.deriveFont((float) (size * scale));
    }

    /** The family comes with the program; a program packed without it falls back on the platform's. */
    private static Font bundled(String file, int fallbackStyle) {
        try (InputStream stream = Type.class.getResourceAsStream("/com/formdev/flatlaf/fonts/inter/" + file)) {
            return stream == null
                    ? new Font(Font.SANS_SERIF, fallbackStyle, 12)
                    : Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (IOException | FontFormatException e) {
            return new Font(Font.SANS_SERIF, fallbackStyle, 12);
        }
    }
}
