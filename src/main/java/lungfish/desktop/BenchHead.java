package lungfish.desktop;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import java.util.stream.Collectors;
import lungfish.drawing.BenchRowPicture;
import lungfish.report.BenchFigure;

/** What the columns of the bench hold; nothing where its figures are told in words. */
final class BenchHead extends Drawn {
    private static final int HIGH = 32;

    private final transient View view;
    private final transient BenchList list;

    BenchHead(View view, BenchList list) {
        this.view = view;
        this.list = list;
        String columns = BenchFigure.LISTED.stream().map(BenchFigure::title).collect(Collectors.joining("; "));
        getAccessibleContext().setAccessibleName("Columns: " + columns);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(1, list.columns().isEmpty() ? 0 : view.px(HIGH));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setColor(view.look().palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(view.look().palette().softInk());
        g.setFont(view.look().type().drawing());
        List<Double> ends = list.columns().endsPx();
        for (int i = 0; i < ends.size(); i++) {
            BenchFigure figure = BenchFigure.LISTED.get(i);
            double end = BenchRowPicture.textPx(view.look()) + ends.get(i);
            boolean isOneLine = figure.underHead().isEmpty();
            ending(figure.head(), end, view.px(isOneLine ? 27 : 13), g);
            ending(figure.underHead(), end, view.px(27), g);
        }
        g.dispose();
    }

    private static void ending(String text, double endX, double y, Graphics2D g) {
        Font font = g.getFont();
        double wide = font.getStringBounds(text, g.getFontRenderContext()).getWidth();
        g.drawString(text, (float) (endX - wide), (float) y);
    }
}
