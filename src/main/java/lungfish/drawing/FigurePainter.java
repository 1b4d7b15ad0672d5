package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.document.Figure;

/** Paints the figures of a document, for paper and for a browser alike. */
public interface FigurePainter {
    /**
     * A figure, ready to be painted; empty where there is nothing to show.
     *
     * @param mostWidthPt that it may be wide, points
     * @param mostHeightPt that it may be high, points
     */
    Optional<Fitted> fitted(Figure figure, double mostWidthPt, double mostHeightPt);

    /**
     * A figure at its scale.
     *
     * @param heightPt of all of it, at the whole width
     * @param scale as it is said under the figure: "1 : 50"; empty where it has none
     */
    record Fitted(double widthPt, double heightPt, Optional<String> scale, Painting painting) {
        /** Paints it with its upper left corner there. */
        public void paint(double x, double y, Graphics2D g) {
            painting.paint(new Rectangle2D.Double(x, y, widthPt, heightPt), g);
        }
    }

    /** Something that fills an area. */
    @FunctionalInterface
    interface Painting {
        void paint(Rectangle2D areaPt, Graphics2D g);
    }
}
