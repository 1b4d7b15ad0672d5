package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.LogEdits;
import lungfish.report.LogWords;
import lungfish.report.Sentences;
import lungfish.room.Log;
import net.miginfocom.swing.MigLayout;

/** What was read and done in the room over time, and what writes it down. */
final class LogSheet extends SideSheet {
    private static final int DAY = 84;

    private final Paragraph headline;
    private final Stack entries = new Stack();
    private final LogForm form;
    private transient Optional<Told> told = Optional.empty();

    /** All that the list depends on. */
    private record Told(Log log, Look look, int widthPx) {}

    LogSheet(View view, Side side) {
        super(view, side, "Log: what was read, and what was done");
        headline = new Paragraph(view, Type::headline, Palette::ink, this::contentPx);
        headline.setName("log-headline");
        form = new LogForm(view, this::contentPx, this::take);
        Stack stack = new Stack();
        stack.add(headline, "growx");
        stack.add(form, "growx, wmin 0");
        stack.add(entries, "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void take(Attempt attempt) {
        view().refused(attempt);
    }

    private void tell() {
        Log log = view().desk().room().log();
        Told now = new Told(log, view().look(), contentPx());
        if (told.equals(Optional.of(now))) {
            return;
        }
        told = Optional.of(now);
        headline.setText(headline(log));
        entries.removeAll();
        LogWords words = new LogWords(view().quantities(), view().names());
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
        entries.revalidate();
        entries.repaint();
    }

    private static String headline(Log log) {
        return log.readings().isEmpty() && log.services().isEmpty()
                ? "Nothing written down yet"
                : Sentences.counted(log.readings().size(), "reading") + ", "
                        + Sentences.counted(log.services().size(), "service");
    }

    private void title(String words, int many) {
        if (many > 0) {
            entries.add(Line.title(view(), words), "growx, gaptop " + view().px(8));
        }
    }

    private void entry(String day, String words, String id, Supplier<Attempt> delete) {
        JPanel row = new JPanel(new MigLayout(
                "insets 0, fillx, gap " + view().px(8) + " 0", "[" + view().px(DAY) + "!][grow, fill][]"));
        row.setOpaque(false);
        Line when = new Line(view(), Type::body, Palette::softInk);
        when.setText(day);
        JButton away = new JButton("Delete");
        away.setName("delete: " + id);
        away.getAccessibleContext().setAccessibleName("Delete: " + words);
        away.addActionListener(event -> take(delete.get()));
        Paragraph text = new Paragraph(view(), Type::body, Palette::ink, () -> contentPx() - view().px(DAY + 100));
        text.setText(words);
        row.add(when, "aligny top");
        row.add(text, "wmin 0, aligny top");
        row.add(away, "aligny top, hmax " + view().px(24));
        entries.add(new JSeparator(), "growx");
        entries.add(row, "growx, wmin 0");
    }
}
