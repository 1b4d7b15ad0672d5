package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.TapLossPicture;
import lungfish.drawing.Type;
import lungfish.quantity.Dimension;
import lungfish.report.PipeWords;

/** One pipe in one layout: verdict and price, the loss between its taps, and the taps on the axis that all cells share. */
final class PipeCell extends Drawn {
    private static final int PAD = 4;
    private static final int LINE = 14;
    private static final int GAP = 8;
    private static final int MARK_GAP = 4;

    private final transient View view;
    private final transient PipesModel model;
    private transient Optional<PipeResult> shown = Optional.empty();
    private String size = "";
    private boolean isSelected;
    private boolean hasFocus;
    private boolean isOld;
    private boolean isDrawn;
    private double mostPa = 1;
    private List<Texts> texts = List.of();

    /** What is written in a cell; the amount is the price without its currency, which stands in the sentences below. */
    private record Texts(String mark, String price, String amount, String spread) {}

    PipeCell(View view, PipesModel model) {
        this.view = view;
        this.model = model;
    }

    static double height(Look look) {
        return look.type().px(2 * PAD + LINE + 2) + TapLossPicture.height(look);
    }

    /** The end of the axis that all cells share. */
    static double mostPa(PipeStudy study) {
        return study.results().stream()
                .mapToDouble(each -> each.losses().worstPa())
                .max()
                .orElse(1);
    }

    void show(Optional<PipeStudy> study, boolean old) {
        mostPa = study.map(PipeCell::mostPa).orElse(1.0);
        isOld = old;
        texts = study.map(PipeStudy::results).orElse(List.of()).stream()
                .map(this::texts)
                .toList();
    }

    private Texts texts(PipeResult result) {
        PipeWords words = new PipeWords(view.quantities());
        return new Texts(
                PipeWords.mark(result),
                words.money(result.variant().price().total()),
                view.quantities().number(result.variant().price().total(), Dimension.MONEY),
                words.pressure(result.spreadPa()));
    }

    Component of(int row, int column, boolean selected, boolean focus) {
        shown = model.result(row, column);
        size = column == 0 ? String.valueOf(model.getValueAt(row, 0)) : "";
        isDrawn = column == 0
                ? model.isDrawn(row)
                : shown.filter(each -> each.variant().asDrawn()).isPresent();
        isSelected = selected && column > 0;
        hasFocus = focus && column > 0;
        getAccessibleContext()
                .setAccessibleName(
                        shown.map(new PipeWords(view.quantities())::spoken).orElse(size));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Palette palette = view.look().palette();
        if (size.isEmpty()) {
            shown.ifPresent(result -> result(result, palette, g));
        } else {
            size(palette, g);
        }
        g.dispose();
    }

    private void size(Palette palette, Graphics2D g) {
        Type type = view.look().type();
        g.setFont(type.label());
        g.setColor(isOld ? palette.free() : palette.ink());
        g.drawString(size, view.px(2), view.px(PAD + LINE - 4));
        if (isDrawn) {
            g.setFont(type.drawing());
            g.setColor(palette.softInk());
            g.drawString("as drawn", view.px(2), view.px(PAD + 2 * LINE - 2));
        }
    }

    private void result(PipeResult result, Palette palette, Graphics2D g) {
        ground(palette, g);
        write(texts(result), isOld ? palette.free() : verdictInk(result, palette), palette, g);
        int left = view.px(PAD);
        Rectangle2D line = new Rectangle2D.Double(
                left, view.px(PAD + LINE + 1), getWidth() - 2.0 * left, TapLossPicture.height(view.look()));
        TapLossPicture.paint(result.losses().allPa(), mostPa, line, view.look(), g);
    }

    private void write(Texts written, Color verdictInk, Palette palette, Graphics2D g) {
        Type type = view.look().type();
        FontMetrics bold = g.getFontMetrics(type.drawingName());
        FontMetrics plain = g.getFontMetrics(type.drawing());
        int left = view.px(PAD);
        int baseline = view.px(PAD + LINE - 3);
        int priceAt = left + bold.stringWidth("●") + view.px(MARK_GAP);
        g.setFont(type.drawingName());
        g.setColor(verdictInk);
        g.drawString(written.mark(), left, baseline);
        g.setColor(isOld ? palette.free() : palette.ink());
        int room = getWidth() - left - priceAt;
        boolean hasRoom = texts.stream().allMatch(each -> bold.stringWidth(each.price()) <= room);
        g.drawString(hasRoom ? written.price() : written.amount(), priceAt, baseline);
        g.setFont(type.drawing());
        g.setColor(isOld ? palette.free() : palette.softInk());
        if (texts.stream().allMatch(each -> both(each, bold, plain) <= room)) {
            g.drawString(written.spread(), getWidth() - left - plain.stringWidth(written.spread()), baseline);
        }
    }

    /** Beside each other. What has no room in one cell is left out of all. */
    private int both(Texts each, FontMetrics bold, FontMetrics plain) {
        return bold.stringWidth(each.price()) + view.px(GAP) + plain.stringWidth(each.spread());
    }

    /** The room as drawn has an edge of ink; what is chosen a ground, and a strong edge while the keys go there. */
    private void ground(Palette palette, Graphics2D g) {
        Rectangle2D box = new Rectangle2D.Double(1.5, 1.5, getWidth() - 4.0, getHeight() - 4.0);
        if (isSelected) {
            g.setColor(palette.accentSoft());
            g.fill(box);
        }
        if (isSelected || isDrawn) {
            g.setColor(isSelected ? (hasFocus ? palette.air() : palette.accent()) : palette.softInk());
            g.setStroke(new java.awt.BasicStroke(view.px(isSelected && hasFocus ? 2 : 1)));
            g.draw(box);
        }
    }

    private static Color verdictInk(PipeResult result, Palette palette) {
        if (!result.good()) {
            return palette.accent();
        }
        return result.matters() ? palette.softInk() : palette.good();
    }
}
