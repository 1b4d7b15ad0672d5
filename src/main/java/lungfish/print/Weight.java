package lungfish.print;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** The two weights of the family that print is set in. Their figures are all of one width. */
final class Weight {
    static final Weight REGULAR = new Weight("Inter-Regular.ttf", Font.PLAIN);
    static final Weight SEMI_BOLD = new Weight("Inter-SemiBold.ttf", Font.BOLD);
    static final List<Weight> ALL = List.of(REGULAR, SEMI_BOLD);

    private final String file;
    private final Font font;
    private final Font foreign;

    private Weight(String file, int style) {
        this.file = file;
        try (InputStream bytes = bytes()) {
            this.font = Font.createFont(Font.TRUETYPE_FONT, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(file, e);
        }
        this.foreign = new Font(Font.SANS_SERIF, style, 1);
    }

    /** The font file, as it comes with the program. */
    InputStream bytes() {
        return Objects.requireNonNull(Weight.class.getResourceAsStream(file), file);
    }

    /** The font that has all letters of a text: the family, else whatever the platform has. */
    Font font(String text, double sizePt) {
        Font able = has(text) ? font : foreign;
        return able.deriveFont((float) sizePt);
    }

    /** Whether the family has all letters of a text. */
    boolean has(String text) {
        return font.canDisplayUpTo(text) < 0;
    }

    /** Whether a font is this one, in any size. */
    boolean is(Font other) {
        return font.getPSName().equals(other.getPSName());
    }
}
