package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Places beside a thing where its name may stand, the best first. */
final class NameSpots {
    private static final double GAP_PX = 4;

    private NameSpots() {}

    /** Below and above, at both ends and in the middle; then beyond a pipe that runs along it; then left and right. */
    static List<Rectangle2D> of(Rectangle2D box, Rectangle2D size, Ink ink, boolean belowFirst) {
        double wide = size.getWidth();
        double high = size.getHeight();
        double gap = ink.px(GAP_PX);
        List<Rectangle2D> spots = new ArrayList<>();
        for (double y : rows(box, high, ink, belowFirst)) {
            for (double x : new double[] {box.getX(), box.getMaxX() - wide, box.getCenterX() - wide / 2}) {
                spots.add(new Rectangle2D.Double(x, y, wide, high));
            }
        }
        for (double y : new double[] {box.getY(), box.getCenterY() - high / 2, box.getMaxY() - high}) {
            spots.add(new Rectangle2D.Double(box.getMaxX() + 2 * gap, y, wide, high));
            spots.add(new Rectangle2D.Double(box.getX() - 2 * gap - wide, y, wide, high));
        }
        return spots;
    }

    private static double[] rows(Rectangle2D box, double high, Ink ink, boolean belowFirst) {
        double below = box.getMaxY() + ink.px(GAP_PX);
        double above = box.getY() - ink.px(GAP_PX) - high;
        double further = ink.mark(PipePainter.BORE_PX + 12);
        return belowFirst
                ? new double[] {below, above, below + further, above - further}
                : new double[] {above, below, above - further, below + further};
    }

    /** The same, but the middles below and above go before the ends. */
    static List<Rectangle2D> middlesFirst(Rectangle2D box, Rectangle2D size, Ink ink, boolean belowFirst) {
        List<Rectangle2D> all = of(box, size, ink, belowFirst);
        List<Rectangle2D> sorted = new ArrayList<>(List.of(all.get(2), all.get(5)));
        sorted.addAll(all);
        return sorted;
    }
}
