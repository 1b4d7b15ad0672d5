package lungfish.desktop;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import lungfish.drawing.Palette;

/** A white sheet on the paper desk: round corners and a hairline. */
class Sheet extends JPanel {
    private static final int CORNER = 10;

    private final transient View view;

    Sheet(View view, LayoutManager layout) {
        super(layout);
        this.view = view;
        setOpaque(false);
    }

    /** A pane that scrolls both ways, where what is in it needs that. */
    static JScrollPane scrolling(Component inside) {
        JScrollPane pane = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        pane.getVerticalScrollBar().setUnitIncrement(24);
        return pane;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Palette palette = view.look().palette();
        double arc = 2.0 * view.px(CORNER);
        var edge = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1.0, getHeight() - 1.0, arc, arc);
        g.setColor(palette.sheet());
        g.fill(edge);
        g.setColor(palette.line());
        g.draw(edge);
        g.dispose();
    }
}
