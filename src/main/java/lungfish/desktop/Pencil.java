package lungfish.desktop;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/** A pencil, over what is typed. */
final class Pencil implements Icon {
    private static final int SIZE = 9;

    private final View view;

    Pencil(View view) {
        this.view = view;
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        double unit = getIconWidth() / 9.0;
        g.scale(unit, unit);
        g.setColor(view.look().palette().softInk());
        g.setStroke(new BasicStroke(1f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline());
        g.dispose();
    }

    /** On a square of nine: the point at the lower left, the shaft to the upper right. */
    private static Path2D outline() {
        Path2D.Double shape = new Path2D.Double();
        shape.moveTo(0.5, 8.5);
        shape.lineTo(1.2, 5.8);
        shape.lineTo(6.3, 0.7);
        shape.lineTo(8.3, 2.7);
        shape.lineTo(3.2, 7.8);
        shape.closePath();
        return shape;
    }

    @Override
    public int getIconWidth() {
        return view.px(SIZE);
    }

    @Override
    public int getIconHeight() {
        return view.px(SIZE);
    }
}
