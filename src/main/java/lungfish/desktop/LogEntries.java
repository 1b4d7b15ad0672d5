package lungfish.desktop;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.LogEdits;
import lungfish.report.LogWords;
import lungfish.room.Log;
import net.miginfocom.swing.MigLayout;

/** All that is written down, the newest first, each with what deletes it. */
final class LogEntries extends Stack {
    private static final int DAY = 84;
    private static final int DELETE = 100;
    private static final int GAP = 4;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Consumer<Attempt> does;
    private String last = "";

    LogEntries(View view, IntSupplier widthPx, Consumer<Attempt> does) {
        this.view = view;
        this.widthPx = widthPx;
        this.does = does;
        setLayout(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view.px(GAP), "[grow, fill]"));
    }

    /** Shows these from now on. */
    void show(Log log) {
        removeAll();
        LogWords words = new LogWords(view.quantities(), view.names());
        title("Read", log.readings().size());
        LogWords.newestFirst(log)
                .forEach(reading -> entry(
                        reading.on().toString(),
                        words.says(reading),
                        reading.id().text(),
                        () -> LogEdits.forgetReadings(List.of(reading.id()))));
        title("Done", log.services().size());
        LogWords.servicesNewestFirst(log)
                .forEach(service -> entry(
                        service.on().toString(),
                        words.says(service),
                        service.id().text(),
                        () -> LogEdits.forgetServices(List.of(service.id()))));
        revalidate();
        repaint();
    }

    private void title(String words, int many) {
        last = "";
        if (many > 0) {
            add(Line.title(view, words), "growx, gaptop " + view.px(8));
        }
    }

    /** The day is said once for all of a day. */
    private void entry(String day, String words, String id, Supplier<Attempt> delete) {
        boolean isSameDay = day.equals(last);
        last = day;
        JPanel row = new JPanel(
                new MigLayout("insets 0, fillx, gap " + view.px(8) + " 0", "[" + view.px(DAY) + "!][grow, fill][]"));
        row.setOpaque(false);
        Line when = new Line(view, Type::body, Palette::softInk);
        when.setText(isSameDay ? "" : day);
        JButton away = new JButton("Delete");
        away.setName("delete: " + id);
        away.getAccessibleContext().setAccessibleName("Delete: " + day + ", " + words);
        away.addActionListener(event -> does.accept(delete.get()));
        Paragraph text =
                new Paragraph(view, Type::body, Palette::ink, () -> widthPx.getAsInt() - view.px(DAY + DELETE));
        text.setText(words);
        row.add(when, "aligny center");
        row.add(text, "wmin 0, aligny center");
        row.add(away, "aligny center, hmax " + view.px(22));
        if (!isSameDay) {
            add(new JSeparator(), "growx");
        }
        add(row, "growx, wmin 0");
    }
}
