package lungfish.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * Text stays text in a PDF, so that one can search and copy it: the letters of the family that are used are embedded.
 * Text that the family has not all letters for is drawn as shapes.
 */
final class EmbeddedText extends PdfBoxGraphics2DFontTextDrawer {
    private final Map<Weight, PDFont> fonts = new LinkedHashMap<>();

    EmbeddedText(PDDocument document) throws IOException {
        for (Weight weight : Weight.ALL) {
            try (InputStream bytes = weight.bytes()) {
                fonts.put(weight, PDType0Font.load(document, bytes));
            }
        }
    }

    @Override
    protected @Nullable PDFont mapFont(Font font, IFontTextDrawerEnv env) {
        for (Map.Entry<Weight, PDFont> entry : fonts.entrySet()) {
            if (entry.getKey().is(font)) {
                return entry.getValue();
            }
        }
        return null;
    }
}
