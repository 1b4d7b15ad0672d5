package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import lungfish.growth.Stage;

/** The mark of a stage on its time line: the shape tells how it stands, the colour only helps. */
public final class StageMark {
    private StageMark() {}

    /** A full dot fits, a half one eats into the reserve, a cross in a ring breaks; its middle is here, its radius in pixels. */
    public static void paint(Stage.State state, double x, double y, double radius, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        Ellipse2D ring = StateMark.circle(x, y, radius);
        ink.fill(ring, ink.palette().sheet());
        switch (state) {
            case FITS -> {
                ink.fill(ring, ink.palette().good());
                ink.draw(ring, ink.palette().good(), 1.6);
            }
            case TIGHT -> {
                ink.fill(
                        new Arc2D.Double(ring.getBounds2D(), 90, 180, Arc2D.PIE),
                        ink.palette().good());
                ink.draw(ring, ink.palette().good(), 1.6);
            }
            case BREAKS -> {
                double arm = 0.45 * radius;
                ink.draw(ring, ink.palette().accent(), 1.6);
                ink.line(x - arm, y - arm, x + arm, y + arm, ink.palette().accent(), 2);
                ink.line(x - arm, y + arm, x + arm, y - arm, ink.palette().accent(), 2);
            }
        }
    }

    /** The line that joins the marks. */
    public static void line(double x, double fromY, double toY, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        ink.line(x, fromY, x, toY, ink.palette().line(), 2);
    }
}
