package lungfish.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import lungfish.blower.Wear;
import lungfish.network.Drop;
import lungfish.network.Drops;
import lungfish.network.Tuned;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;

/**
 * The plane on which curves are drawn: flow to the right, gauge pressure up.
 *
 * @param box where it lies, pixels
 * @param mostM3PerS flow at its right edge
 * @param mostPa pressure at its upper edge
 */
record CurvePlot(Rectangle2D box, double mostM3PerS, double mostPa) {
    private static final int POINTS = 60;
    private static final double BEYOND = 1.12; // the demand goes on a little behind its point

    double x(double m3PerS) {
        return box.getX() + box.getWidth() * m3PerS / mostM3PerS;
    }

    double y(double pa) {
        return box.getMaxY() - box.getHeight() * pa / mostPa;
    }

    /** What a fleet gives, from the open air up to where it gives nothing or the plane ends. */
    Path2D curve(Fleet fleet, Wear wear) {
        double top = Math.min(mostPa, fleet.shutPa(wear));
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= POINTS; i++) {
            double pa = top * i / POINTS;
            add(path, x(fleet.freeAt(pa, wear)), y(pa));
        }
        return path;
    }

    /**
     * What the room asks for when every outlet gets the same share of its target: the index outlet's own law, and the
     * pipe's part as the square of the flow, as its fittings take it.
     */
    Path2D demand(Needed needed) {
        Tuned tuned = needed.tuned();
        Drop index = tuned.network().drops().get(tuned.indexDrop());
        double target = index.targetM3PerS().orElse(0);
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= POINTS; i++) {
            double share = BEYOND * i / POINTS;
            double ownPa = Drops.needed(tuned.network().conditions(), index, share * target)
                    .totalPa();
            add(path, x(share * needed.freeM3PerS()), y(ownPa + share * share * needed.pipePa()));
        }
        return path;
    }

    private static void add(Path2D path, double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }
}
