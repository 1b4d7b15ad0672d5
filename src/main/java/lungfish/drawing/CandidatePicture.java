package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import lungfish.blower.Wear;
import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/**
 * A candidate's tired curve in little, with what the room needs and where it would run. The need stands at the same place in
 * every picture of a room, so that one look down a list tells which curves pass above it and by how much. What lies beyond
 * the picture is told by an arrow at its edge.
 */
public final class CandidatePicture {
    private static final double WIDE_PX = 84;
    private static final double HIGH_PX = 46;
    private static final double MARGIN_PX = 4;
    private static final double POINT_PX = 3;

    /** The picture goes so many times beyond the need. */
    private static final double TIMES_FLOW = 2.5;

    private static final double TIMES_PRESSURE = 2.5;

    private final Ink ink;
    private final CurvePlot plot;

    private CandidatePicture(Ink ink, Rectangle2D area, Needed needed) {
        this.ink = ink;
        this.plot = new CurvePlot(
                Marks.outset(area, -ink.px(MARGIN_PX)),
                TIMES_FLOW * needed.freeM3PerS(),
                TIMES_PRESSURE * needed.pressurePa());
    }

    /** How wide it likes to be, pixels. */
    public static double width(Look look) {
        return look.px(WIDE_PX);
    }

    /** How high it likes to be, pixels. */
    public static double height(Look look) {
        return look.px(HIGH_PX);
    }

    /** Fills the area. */
    public static void paint(Candidate candidate, Needed needed, Rectangle2D area, Look look, Graphics2D g) {
        CandidatePicture picture = new CandidatePicture(Ink.flat(look, g), area, needed);
        picture.axes();
        picture.curve(candidate);
        picture.need(needed);
        picture.runs(candidate.tired());
    }

    private void axes() {
        Rectangle2D box = plot.box();
        Path2D axes = new Path2D.Double();
        axes.moveTo(box.getX(), box.getY());
        axes.lineTo(box.getX(), box.getMaxY());
        axes.lineTo(box.getMaxX(), box.getMaxY());
        ink.draw(axes, ink.palette().softInk(), 1);
    }

    private void curve(Candidate candidate) {
        Shape before = ink.g().getClip();
        ink.g().clip(Marks.outset(plot.box(), ink.px(1)));
        BasicStroke stroke = new BasicStroke((float) ink.px(1.8), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        ink.draw(plot.curve(candidate.fleet(), Wear.TIRED), ink.palette().air(), stroke);
        ink.g().setClip(before);
    }

    private void need(Needed needed) {
        Shape ring = StateMark.circle(plot.x(needed.freeM3PerS()), plot.y(needed.pressurePa()), ink.px(POINT_PX));
        ink.fill(ring, ink.palette().sheet());
        ink.draw(ring, ink.palette().ink(), 1.6);
    }

    private void runs(Running running) {
        double x = plot.x(running.freeM3PerS());
        double y = plot.y(running.gaugePa());
        Rectangle2D box = plot.box();
        double atX = Math.min(x, box.getMaxX());
        double atY = Math.max(y, box.getY());
        if (x > box.getMaxX() || y < box.getY()) {
            arrow(atX, atY, x > box.getMaxX() ? 1 : 0, y < box.getY() ? -1 : 0);
        } else {
            ink.fill(StateMark.circle(x, y, ink.px(POINT_PX)), ink.palette().accent());
        }
    }

    /** A head that points out of the picture. */
    private void arrow(double x, double y, int across, int down) {
        double size = ink.px(POINT_PX);
        Path2D head = new Path2D.Double();
        head.moveTo(-size, -size);
        head.lineTo(size, 0);
        head.lineTo(-size, size);
        head.closePath();
        head.transform(java.awt.geom.AffineTransform.getRotateInstance(Math.atan2(down, across)));
        head.transform(java.awt.geom.AffineTransform.getTranslateInstance(x, y));
        ink.fill(head, ink.palette().accent());
    }
}
