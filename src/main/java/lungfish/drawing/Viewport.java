package lungfish.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * All arithmetic between metres and pixels. Immutable; x to the right, y down the page, in both.
 *
 * @param pxPerM above 0
 * @param leftPx where the point 0, 0 of the room lies
 * @param topPx where the point 0, 0 of the room lies
 */
public record Viewport(double pxPerM, double leftPx, double topPx) {
    /** A metre never looks smaller than this, nor larger than {@link #MOST_PX_PER_M}. */
    public static final double LEAST_PX_PER_M = 2;

    public static final double MOST_PX_PER_M = 20_000;

    public Viewport {
        if (!(pxPerM > 0)) {
            throw new IllegalArgumentException("pxPerM must be above 0, not " + pxPerM);
        }
    }

    /** The largest view in which this part of the room lies inside this area, in its middle. */
    public static Viewport fit(Rectangle2D partM, Rectangle2D areaPx) {
        double wide = areaPx.getWidth() / Math.max(partM.getWidth(), 1e-6);
        double high = areaPx.getHeight() / Math.max(partM.getHeight(), 1e-6);
        double scale = bounded(Math.min(wide, high));
        return new Viewport(
                scale,
                areaPx.getCenterX() - scale * partM.getCenterX(),
                areaPx.getCenterY() - scale * partM.getCenterY());
    }

    public double xPx(double xM) {
        return leftPx + pxPerM * xM;
    }

    public double yPx(double yM) {
        return topPx + pxPerM * yM;
    }

    public double xM(double xPx) {
        return (xPx - leftPx) / pxPerM;
    }

    public double yM(double yPx) {
        return (yPx - topPx) / pxPerM;
    }

    public Point2D px(double xM, double yM) {
        return new Point2D.Double(xPx(xM), yPx(yM));
    }

    public Point2D m(Point2D px) {
        return new Point2D.Double(xM(px.getX()), yM(px.getY()));
    }

    /** A length on the page as a length in the room. */
    public double lengthM(double lengthPx) {
        return lengthPx / pxPerM;
    }

    /** A length in the room as a length on the page. */
    public double lengthPx(double lengthM) {
        return lengthM * pxPerM;
    }

    public Rectangle2D px(Rectangle2D m) {
        return new Rectangle2D.Double(xPx(m.getX()), yPx(m.getY()), lengthPx(m.getWidth()), lengthPx(m.getHeight()));
    }

    /** Larger by a factor, with the point under this pixel staying there; bounded by the least and the most scale. */
    public Viewport zoomed(double factor, Point2D aboutPx) {
        double scale = bounded(pxPerM * factor);
        double by = scale / pxPerM;
        return new Viewport(
                scale, aboutPx.getX() - by * (aboutPx.getX() - leftPx), aboutPx.getY() - by * (aboutPx.getY() - topPx));
    }

    public Viewport panned(double dxPx, double dyPx) {
        return new Viewport(pxPerM, leftPx + dxPx, topPx + dyPx);
    }

    public AffineTransform transform() {
        return new AffineTransform(pxPerM, 0, 0, pxPerM, leftPx, topPx);
    }

    private static double bounded(double scale) {
        return Math.min(MOST_PX_PER_M, Math.max(LEAST_PX_PER_M, scale));
    }
}
