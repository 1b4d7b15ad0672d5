package lungfish.web;

import java.awt.Graphics2D;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import lungfish.drawing.FigurePainter;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** A figure as SVG: text stays text, the same figure gives the same bytes. */
public final class SvgPicture {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgPicture() {}

    /** A file of its own. */
    public static byte[] file(FigurePainter.Fitted figure, String title) {
        SVGGraphics2D g = painted(figure, "f");
        StringWriter text = new StringWriter();
        try {
            Element root = g.getRoot();
            dress(root, figure, title);
            g.stream(root, text, true, false);
        } catch (SVGGraphics2DIOException e) {
            throw new IllegalStateException(e); // a string writer has no I/O
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Inside a page.
     *
     * @param prefix of its ids, so that those of two figures on a page differ
     */
    static void inline(FigurePainter.Fitted figure, String title, String prefix, Markup page) {
        Element root = painted(figure, prefix).getRoot();
        dress(root, figure, title);
        write(root, page);
    }

    private static SVGGraphics2D painted(FigurePainter.Fitted figure, String prefix) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setComment(null);
        context.setPrecision(4);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String kind) {
                return prefix + "-" + super.generateID(kind);
            }
        });
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        Graphics2D own = (Graphics2D) g.create();
        figure.paint(0, 0, own);
        own.dispose();
        return g;
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void dress(Element root, FigurePainter.Fitted figure, String title) {
        root.setAttribute("viewBox", "0 0 " + round(figure.widthPt()) + " " + round(figure.heightPt()));
        root.setAttribute("width", round(figure.widthPt()) + "pt");
        root.setAttribute("height", round(figure.heightPt()) + "pt");
        root.setAttribute("role", "img");
        root.setAttribute("font-family", "Inter, 'Helvetica Neue', Arial, sans-serif");
        Element name = root.getOwnerDocument().createElementNS(SVG, "title");
        name.setTextContent(title);
        root.insertBefore(name, root.getFirstChild());
    }

    private static String round(double pt) {
        return String.valueOf(Math.ceil(pt * 10) / 10);
    }

    private static void write(Node node, Markup page) {
        if (node instanceof Text text) {
            page.words(text.getData());
        } else if (node instanceof Element element) {
            page.element(element.getTagName(), () -> inside(element, page), attributes(element));
        }
    }

    private static void inside(Element element, Markup page) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            write(child, page);
        }
    }

    private static String[] attributes(Element element) {
        NamedNodeMap all = element.getAttributes();
        String[] told = new String[2 * all.getLength()];
        for (int i = 0; i < all.getLength(); i++) {
            told[2 * i] = all.item(i).getNodeName();
            told[2 * i + 1] = all.item(i).getNodeValue();
        }
        return told;
    }
}
