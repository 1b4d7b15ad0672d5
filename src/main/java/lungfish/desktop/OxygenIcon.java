package lungfish.desktop;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import lungfish.drawing.OxygenSign;
import lungfish.drawing.OxygenState;

/** The sign of a tank in an outage, as on the drawing. */
record OxygenIcon(View view, OxygenState state) implements Icon {
    private static final int WIDE = 18;
    private static final int HIGH = 13;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Rectangle2D box = new Rectangle2D.Double(x + 1, y + 1, getIconWidth() - 2, getIconHeight() - 2);
        OxygenSign.sample(state, box, view.look(), g);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return view.px(WIDE);
    }

    @Override
    public int getIconHeight() {
        return view.px(HIGH);
    }
}
