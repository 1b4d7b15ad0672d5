package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.build.PartsList;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.BuildingEdits;
import lungfish.quantity.Dimension;
import net.miginfocom.swing.MigLayout;

/** The parts list: what and how much to buy, and what it costs there, which the keeper may say. */
final class PartPrices extends JPanel {
    private static final int AMOUNT = 90;
    private static final int PRICE = 110;
    private static final int GAP = 10;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Consumer<Attempt> does;
    private transient Optional<PartsList> shown = Optional.empty();

    PartPrices(View view, IntSupplier widthPx, Consumer<Attempt> does) {
        this.view = view;
        this.widthPx = widthPx;
        this.does = does;
        setOpaque(false);
        setName("part-prices");
        getAccessibleContext().setAccessibleName("Parts to buy, with their prices");
    }

    void show(PartsList parts) {
        if (shown.equals(Optional.of(parts)) && getComponentCount() > 0) {
            return;
        }
        shown = Optional.of(parts);
        removeAll();
        setLayout(new MigLayout(
                "insets 0, fillx, wrap 3, gap " + view.px(GAP) + " " + view.px(3), "[grow, fill][right][fill]"));
        heading();
        parts.lines().stream().filter(line -> line.buy() > 0).forEach(this::line);
        revalidate();
        repaint();
    }

    private void heading() {
        add(text("Part", Type::label, Palette::softInk, this::namePx), "wmin 0");
        add(Line.title(view, "Buy"));
        add(Line.title(view, "Price of one"));
    }

    private void line(PartsList.Line line) {
        add(new JSeparator(), "spanx 3, growx");
        String name = line.detail().isEmpty() ? line.name() : line.name() + ", " + line.detail();
        add(text(name, Type::body, Palette::ink, this::namePx), "wmin 0, aligny top");
        Line buy = new Line(view, Type::label, Palette::ink);
        buy.setText(amount(line));
        add(buy, "aligny top");
        add(price(line), "wmin 0, wmax " + view.px(PRICE) + ", aligny top");
    }

    private String amount(PartsList.Line line) {
        Dimension dimension = line.unit() == PartsList.Unit.METRES ? Dimension.LENGTH : Dimension.COUNT;
        return view.quantities().show(line.buy(), dimension);
    }

    /** Empty where nothing of the keeper's own is said; then what the class costs is told beside it. */
    private Component price(PartsList.Line line) {
        QuantityField field = QuantityField.refusing(
                view,
                Dimension.MONEY,
                () -> view.desk().room().building().price(line.key()),
                si -> say(line, si),
                told -> {});
        field.setName("price: " + line.key());
        field.getAccessibleContext().setAccessibleName("Price of " + line.name());
        OptionalDouble usual = line.ownPrice() ? OptionalDouble.empty() : line.price();
        field.whenSilent(() -> new Silence(usual, ""));
        return field;
    }

    private String say(PartsList.Line line, OptionalDouble si) {
        Attempt attempt = BuildingEdits.price(line.key(), line.name(), si);
        does.accept(attempt);
        return attempt.refused()
                .map(refused -> refused.sentence(view.quantities()))
                .orElse("");
    }

    private int namePx() {
        return widthPx.getAsInt() - view.px(AMOUNT + PRICE + 2 * GAP);
    }

    private Paragraph text(String text, Function<Type, Font> type, Function<Palette, Color> ink, IntSupplier px) {
        Paragraph paragraph = new Paragraph(view, type, ink, px);
        paragraph.setText(text);
        return paragraph;
    }
}
