package lungfish.desktop;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.Icon;
import lungfish.drawing.OutletState;
import lungfish.drawing.StateMark;

/** The shape of a state, as on the drawing. */
record StateIcon(View view, OutletState state) implements Icon {
    private static final double RADIUS = 3.2;
    private static final int SIZE = 16;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        double half = getIconWidth() / 2.0;
        StateMark.paint(state, x + half, y + half, view.look().type().px(RADIUS), view.look(), g);
        g.dispose();
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
