package lungfish.desktop;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import lungfish.choice.PipeLayout;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.report.PipeWords;

/** Over a column of pipes: how the main is laid, how often it is fed, and whether it is drawn so. */
final class PipeHead extends Drawn {
    private static final int LINE = 15;
    private static final int LINES = 3;
    private static final int PAD = 4;

    private final transient View view;
    private final transient PipesModel model;
    private int column;

    PipeHead(View view, PipesModel model) {
        this.view = view;
        this.model = model;
    }

    Component of(int that) {
        column = that;
        getAccessibleContext().setAccessibleName(model.getColumnName(that));
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(view.px(PAD), view.px(LINES * LINE + PAD));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (column == 0 || column >= model.getColumnCount()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Palette palette = view.look().palette();
        Type type = view.look().type();
        PipeLayout layout = model.layout(column);
        int x = view.px(PAD);
        g.setFont(type.label());
        g.setColor(palette.ink());
        g.drawString(PipeWords.main(layout), x, view.px(LINE - 3));
        g.setFont(type.drawing());
        g.setColor(palette.softInk());
        g.drawString(PipeWords.feeds(layout), x, view.px(2 * LINE - 3));
        g.drawString(column == 1 ? "as drawn" : "", x, view.px(3 * LINE - 3));
        g.dispose();
    }
}
