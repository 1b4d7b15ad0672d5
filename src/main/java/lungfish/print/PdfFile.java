package lungfish.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Pages as a PDF. The same pages give the same bytes: it holds no date, and nothing drawn at random. */
public final class PdfFile {
    private static final String MAKER = "Lungfish";

    private PdfFile() {}

    /** Writes them, and leaves the stream open. */
    public static void write(Printout printout, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L); // else made of the hour
            describe(document, printout.title());
            try (EmbeddedText text = new EmbeddedText(document)) {
                for (PrintedPage page : printout.pages()) {
                    add(page, document, text);
                }
            }
            document.save(out);
        }
    }

    /** The same as bytes. */
    public static byte[] bytes(Printout printout) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            write(printout, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // nothing but memory and our own fonts is read and written
        }
        return out.toByteArray();
    }

    private static void describe(PDDocument document, String title) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator(MAKER);
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences shown = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
    }

    private static void add(PrintedPage printed, PDDocument document, EmbeddedText text) throws IOException {
        float width = (float) printed.paper().widthPt();
        float height = (float) printed.paper().heightPt();
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(text);
        printed.paint(g);
        g.dispose();
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }
}
