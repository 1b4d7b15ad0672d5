package lungfish.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import lungfish.report.DrillCard;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Reads what was written with another reader: PDFBox's own, and its renderer. */
final class PdfFileTest {
    private static final double MM_PER_PT = 25.4 / 72;
    /** Two ways to smooth the edges of letters differ by some grey. */
    private static final int SMOOTHING = 24;

    private static Printout usual(Paper paper) {
        return DrillCardPage.of(Cards.usual(), paper, Optional.empty());
    }

    private static byte[] bytes(Printout printout) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(printout, out);
        return out.toByteArray();
    }

    @Test
    void itsTextCanBeSearchedAndCopied() throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes(usual(Paper.A4)))) {
            String text = new PDFTextStripper().getText(read);
            assertThat(text)
                    .contains("If the air stops", "Basement rainbows", "1 h 50 min", "Rack A, shelf 1")
                    .contains(DrillCard.ESTIMATES);
            for (DrillCard.Part part : Cards.usual().parts()) {
                part.steps().forEach(step -> assertThat(text).contains(step.action()));
            }
            assertThat(text).contains("2 Shut the hall valve", "★ Rainbows 3 Rack A, shelf 1 1:51 3:05 10:10");
        }
    }

    /** ISO 216: A4 is 210 mm by 297 mm. ANSI: letter is 8.5 in by 11 in, 215.9 mm by 279.4 mm. */
    @Test
    void itIsOnePageOfItsPaper() throws IOException {
        assertSize(Paper.A4, 210, 297);
        assertSize(Paper.US_LETTER, 215.9, 279.4);
    }

    private static void assertSize(Paper paper, double wideMm, double highMm) throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes(usual(paper)))) {
            assertThat(read.getNumberOfPages()).isEqualTo(1);
            assertThat(read.getPage(0).getMediaBox().getWidth() * MM_PER_PT).isCloseTo(wideMm, within(0.01));
            assertThat(read.getPage(0).getMediaBox().getHeight() * MM_PER_PT).isCloseTo(highMm, within(0.01));
        }
    }

    @Test
    void itsFontsComeWithIt() throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes(usual(Paper.A4)))) {
            PDResources page = read.getPage(0).getResources();
            int fonts = 0;
            for (COSName name : page.getXObjectNames()) {
                PDResources drawn = ((PDFormXObject) page.getXObject(name)).getResources();
                for (COSName fontName : drawn.getFontNames()) {
                    PDFont font = drawn.getFont(fontName);
                    assertThat(font.isEmbedded()).isTrue();
                    assertThat(font.getName()).contains("Inter");
                    fonts++;
                }
            }
            assertThat(fonts).isEqualTo(2);
        }
    }

    @Test
    void theSameCardGivesTheSameBytes() throws IOException {
        assertThat(bytes(usual(Paper.A4))).isEqualTo(bytes(usual(Paper.A4)));
    }

    @Test
    void itSaysItsTitleAndNoDate() throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes(usual(Paper.A4)))) {
            assertThat(read.getDocumentInformation().getTitle()).isEqualTo("Basement rainbows: if the air stops");
            assertThat(read.getDocumentInformation().getCreationDate()).isNull();
            assertThat(read.getDocumentInformation().getModificationDate()).isNull();
        }
    }

    /** Names in letters that the family has not are drawn, not refused. */
    @Test
    void aNameInOtherLettersIsDrawn() throws IOException {
        DrillCard card = Cards.named("魚の部屋");
        try (PDDocument read = Loader.loadPDF(bytes(DrillCardPage.of(card, Paper.A4, Optional.empty())))) {
            assertThat(new PDFTextStripper().getText(read)).contains("If the air stops");
        }
    }

    @ParameterizedTest
    @EnumSource
    void picturePdfAndPrinterShowTheSame(Paper paper) throws IOException, PrinterException {
        Printout printout = usual(paper);
        BufferedImage picture = printout.picture(0, 72);
        try (PDDocument read = Loader.loadPDF(bytes(printout))) {
            assertAlike(picture, new PDFRenderer(read).renderImageWithDPI(0, 72));
        }
        assertAlike(picture, printed(printout, picture.getWidth(), picture.getHeight()));
    }

    private static BufferedImage printed(Printout printout, int width, int height) throws PrinterException {
        BufferedImage sheet = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = sheet.createGraphics();
        g.setColor(java.awt.Color.WHITE);
        g.fillRect(0, 0, width, height);
        PaperTray tray = new PaperTray(printout);
        assertThat(tray.getNumberOfPages()).isEqualTo(1);
        assertThat(tray.getPrintable(0).print(g, tray.getPageFormat(0), 0)).isEqualTo(Printable.PAGE_EXISTS);
        g.dispose();
        return sheet;
    }

    /** As dark in every square of 12 points. */
    private static void assertAlike(BufferedImage one, BufferedImage other) {
        for (int x = 0; x + 12 < Math.min(one.getWidth(), other.getWidth()); x += 12) {
            for (int y = 0; y + 12 < Math.min(one.getHeight(), other.getHeight()); y += 12) {
                assertThat(grey(one, x, y)).as("at %d, %d", x, y).isCloseTo(grey(other, x, y), within(SMOOTHING));
            }
        }
    }

    private static int grey(BufferedImage image, int x, int y) {
        int sum = 0;
        for (int rgb : image.getRGB(x, y, 12, 12, null, 0, 12)) {
            sum += rgb & 0xFF;
        }
        return sum / 144;
    }

    @Test
    void aPictureIsAsLargeAsItsPaper() {
        BufferedImage picture = usual(Paper.US_LETTER).picture(0, 100);
        assertThat(List.of(picture.getWidth(), picture.getHeight())).isEqualTo(List.of(850, 1100));
    }
}
