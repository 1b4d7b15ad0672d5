package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import lungfish.document.Document;
import lungfish.document.Part;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** The rows of a document on a sheet: a title, a paragraph, a caution, a figure, a table, or a step with its box. */
final class DocumentRows {
    private static final int GAP = 6;
    private static final int WIDE_GAP = 16;
    private static final double FACT_SHARE = 0.36;

    private final View view;
    private final IntSupplier widthPx;
    private final BiConsumer<String, Optional<LocalDate>> ticks;

    DocumentRows(View view, IntSupplier widthPx, BiConsumer<String, Optional<LocalDate>> ticks) {
        this.view = view;
        this.widthPx = widthPx;
        this.ticks = ticks;
    }

    /** What one row says. */
    sealed interface Item permits Title, Text, Said, Table, Ticked {}

    private record Title(String text) implements Item {}

    private record Text(String text, boolean isCaution) implements Item {}

    private record Said(Part.Fact fact) implements Item {}

    private record Table(Part.Grid grid) implements Item {}

    private record Ticked(Part.Step step) implements Item {}

    /** A row that stands on the sheet. */
    record Row(Item item, Component part) {}

    /** All rows of these sections, in order. */
    static List<Item> items(List<Document.Section> sections) {
        List<Item> items = new ArrayList<>();
        for (Document.Section section : sections) {
            items.add(new Title(section.title()));
            section.parts().forEach(part -> addTo(items, part));
        }
        return items;
    }

    private static void addTo(List<Item> items, Part part) {
        if (part instanceof Part.Paragraph paragraph) {
            items.add(new Text(paragraph.text(), false));
        } else if (part instanceof Part.Caution caution) {
            items.add(new Text("! " + caution.text(), true));
        } else if (part instanceof Part.Facts facts) {
            facts.facts().forEach(fact -> items.add(new Said(fact)));
        } else if (part instanceof Part.Grid grid) {
            items.add(new Table(grid));
        } else if (part instanceof Part.Checklist list) {
            list.steps().forEach(step -> items.add(new Ticked(step)));
        }
    }

    /** The same row with other words, if it can say them: a box that stays keeps the focus. */
    Optional<Row> tell(Row row, Item item) {
        if (row.part() instanceof StepRow step && item instanceof Ticked ticked) {
            step.tell(ticked.step());
            return Optional.of(new Row(item, step));
        }
        if (row.part() instanceof Paragraph paragraph
                && row.item() instanceof Text then
                && item instanceof Text now
                && then.isCaution() == now.isCaution()) {
            paragraph.setText(now.text());
            return Optional.of(new Row(item, paragraph));
        }
        return Optional.empty();
    }

    /** A new row. */
    Row row(Item item) {
        return new Row(item, part(item));
    }

    private Component part(Item item) {
        if (item instanceof Title title) {
            Line line = new Line(view, Type::label, Palette::ink);
            line.setText(title.text());
            return line;
        } else if (item instanceof Text text) {
            return text(text.text(), text.isCaution() ? Palette::softInk : Palette::ink, widthPx);
        } else if (item instanceof Said said) {
            return fact(said.fact());
        } else if (item instanceof Table table) {
            return table(table.grid());
        }
        StepRow row = new StepRow(view, widthPx, ticks);
        row.tell(((Ticked) item).step());
        return row;
    }

    /** How a row of this stands in its column. */
    String constraints(Item item) {
        if (item instanceof Title) {
            return "wmin 0, gaptop " + view.px(WIDE_GAP);
        }
        boolean isTitled = item instanceof Table table && !table.grid().title().isEmpty();
        return isTitled ? "wmin 0, gaptop " + view.px(GAP) : "wmin 0";
    }

    private JPanel fact(Part.Fact fact) {
        JPanel row = holder("insets 0, fillx, wrap 2, gap " + view.px(GAP) + " 0", "[fill][grow, fill]");
        int what = (int) (FACT_SHARE * widthPx.getAsInt());
        row.add(text(fact.what(), Palette::softInk, () -> what), "wmin 0, aligny top");
        row.add(text(fact.said(), Palette::ink, () -> widthPx.getAsInt() - what - view.px(GAP)), "wmin 0, aligny top");
        return row;
    }

    private JPanel table(Part.Grid grid) {
        JPanel holder = holder("insets 0, fillx, wrap 1, gap 0 " + view.px(GAP), "[grow, fill]");
        if (!grid.title().isEmpty()) {
            holder.add(Line.title(view, grid.title()), "wmin 0");
        }
        PlainTable table = new PlainTable(view, grid);
        holder.add(table.header(), "wmin 0");
        holder.add(table, "wmin 0");
        return holder;
    }

    private static JPanel holder(String layout, String columns) {
        JPanel holder = new JPanel(new MigLayout(layout, columns));
        holder.setOpaque(false);
        return holder;
    }

    private Paragraph text(String text, Function<Palette, Color> ink, IntSupplier px) {
        Paragraph paragraph = new Paragraph(view, Type::body, ink, px);
        paragraph.setText(text);
        return paragraph;
    }
}
