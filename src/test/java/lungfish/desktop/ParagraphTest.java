package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.Rectangle;
import java.nio.file.Path;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ParagraphTest {
    @TempDir
    private Path folder;

    private int widthPx = 400;

    private Paragraph paragraph(String text) {
        View view = new Bench(folder, "starting-out").pane().view();
        Paragraph paragraph = new Paragraph(view, Type::body, Palette::ink, () -> widthPx);
        paragraph.setText(text);
        return paragraph;
    }

    /** A question that moves what it asks about has the window laid out for ever. */
    @Test
    void askingForItsSizeLeavesItWhereItIs() {
        Paragraph paragraph = paragraph("Two words and some more, so that they wrap.");
        Rectangle there = new Rectangle(3, 4, 50, 60);
        paragraph.setBounds(there);
        paragraph.getPreferredSize();
        assertThat(paragraph.getBounds()).isEqualTo(there);
    }

    @Test
    void itIsAsWideAsAskedAndHigherWhereItIsNarrower() {
        Paragraph paragraph = paragraph("Eight words that need more than one line.");
        int wide = paragraph.getPreferredSize().height;
        widthPx = 60;
        assertThat(paragraph.getPreferredSize().width).isEqualTo(60);
        assertThat(paragraph.getPreferredSize().height).isGreaterThan(2 * wide);
    }

    @Test
    void howNarrowItHappensToBeMakesItNoHigher() {
        Paragraph paragraph = paragraph("Two words and some more.");
        paragraph.setSize(3, 40);
        assertThat(paragraph.getMinimumSize().height).isEqualTo(paragraph.getPreferredSize().height);
    }

    @Test
    void aNewTextIsMeasuredAnew() {
        Paragraph paragraph = paragraph("short");
        int one = paragraph.getPreferredSize().height;
        paragraph.setText("one\ntwo\nthree");
        assertThat(paragraph.getPreferredSize().height).isEqualTo(3 * one);
    }

    /** What was measured once is remembered for all paragraphs: a font of another size is another question. */
    @Test
    void aLargerFontIsMeasuredAnew() {
        Paragraph paragraph = paragraph("one\ntwo");
        int small = paragraph.getPreferredSize().height;
        paragraph.setFont(paragraph.getFont().deriveFont(2 * paragraph.getFont().getSize2D()));
        assertThat(paragraph.getPreferredSize().height).isGreaterThan(3 * small / 2);
    }

    /** A view that only asks again would otherwise have every text of a long sheet laid out anew. */
    @Test
    void theSameFontIsNotPutOnAgain() {
        Paragraph paragraph = paragraph("short");
        Font before = paragraph.getFont();
        paragraph.inked(Palette::softInk);
        assertThat(paragraph.getFont()).isSameAs(before);
    }
}
