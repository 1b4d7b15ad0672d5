package lungfish.desktop;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.LogEdits;
import lungfish.everyday.Named;
import lungfish.report.LogKinds;
import lungfish.report.Sentences;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Service;
import lungfish.room.ServiceId;
import net.miginfocom.swing.MigLayout;

/** Writes down what was read or done on a day. */
final class LogForm extends JPanel {
    private static final int COLUMN = 180;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Consumer<Attempt> does;
    private final JTextField day =
            new JTextField(LocalDate.now(ZoneId.systemDefault()).toString(), 10);
    private final JTextField note = new JTextField(12);
    private final Choice<LogKinds> kind = new Choice<>("What was read");
    private final Choice<OutletId> outlet = new Choice<>("Outlet");
    private final Choice<Service.Kind> service = new Choice<>("What was done");
    private final LogNumbers numbers;
    private final Paragraph trouble;

    LogForm(View view, IntSupplier widthPx, Consumer<Attempt> does) {
        this.view = view;
        this.widthPx = widthPx;
        this.does = does;
        this.numbers = new LogNumbers(view);
        this.trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        setOpaque(false);
        day.setName("log-day");
        day.getAccessibleContext().setAccessibleName("Day, as 2026-03-01");
        note.getAccessibleContext().setAccessibleName("Note");
        note.setName("log-note");
        trouble.setName("log-trouble");
        kind.offer(List.of(LogKinds.values()), LogKinds::words, LogKinds.JAR::equals);
        service.offer(List.of(Service.Kind.values()), LogKinds::done, Service.Kind.DEVICE_CLEANED::equals);
        kind.addActionListener(event -> layOut());
        view.follow(this, this::tell);
    }

    private void tell() {
        outlet.offer(
                view.desk().room().seats().stream()
                        .map(seat -> seat.outlet().id())
                        .toList(),
                id -> Sentences.capital(view.names().of(id.part())),
                id -> true);
        layOut();
    }

    private void layOut() {
        removeAll();
        int columns = Math.max(1, widthPx.getAsInt() / view.px(COLUMN));
        setLayout(new MigLayout(
                "insets 0, fillx, wrap " + columns + ", gap " + view.px(10) + " " + view.px(8),
                "[0:100:, grow, fill]".repeat(columns)));
        field("What was read", kind);
        if (kind() == LogKinds.JAR) {
            field("Outlet", outlet);
        }
        numbers.fields(kind()).forEach(each -> field(each.label(), each.field()));
        field("Day", day);
        field("Note", note);
        add(button("Write it down", this::read), "newline, spanx, growx 0");
        field("What was done", service);
        add(button("Write the service down", this::serve), "aligny bottom, growx 0");
        trouble.setVisible(!trouble.getText().isEmpty());
        add(trouble, "newline, spanx, hidemode 3, wmin 0");
        revalidate();
        repaint();
    }

    private LogKinds kind() {
        return kind.chosen().orElse(LogKinds.JAR);
    }

    private void field(String label, JComponent field) {
        add(Line.over(view, label, field), "wmin 0, top");
    }

    private JButton button(String words, Runnable does) {
        JButton button = new JButton(words);
        button.setName(words);
        button.addActionListener(event -> does.run());
        return button;
    }

    private void read() {
        Optional<Reading.Measured> measured = numbers.measured(kind(), outlet.chosen());
        Optional<LocalDate> on = day();
        if (on.isEmpty()) {
            say("The day is not one: type it as 2026-03-01.");
        } else if (measured.isEmpty()) {
            say("Type every number first: " + String.join(", ", kind().numbers()) + ".");
        } else {
            take(LogEdits.read(view.desk().room(), on.get(), measured.get(), Reading.Shut.NOTHING, note.getText()));
        }
    }

    private void serve() {
        Optional<LocalDate> on = day();
        if (on.isEmpty()) {
            say("The day is not one: type it as 2026-03-01.");
            return;
        }
        String said = note.getText().strip();
        take(LogEdits.serve(
                view.desk().room(),
                new Service(
                        new ServiceId("new"),
                        on.get(),
                        service.chosen().orElse(Service.Kind.DEVICE_CLEANED),
                        chosenOutlets(),
                        Optional.empty(),
                        said.isEmpty() ? Optional.empty() : Optional.of(said))));
    }

    /** Those that are chosen on the drawing; none chosen means all. */
    private List<OutletId> chosenOutlets() {
        return view.selection().parts().stream()
                .flatMap(part -> Named.outlets(view.desk().room(), part.id()).stream())
                .flatMap(Set::stream)
                .distinct()
                .sorted(Comparator.comparing(OutletId::text))
                .toList();
    }

    private Optional<LocalDate> day() {
        try {
            return Optional.of(LocalDate.parse(day.getText().strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private void take(Attempt attempt) {
        say(attempt.refused()
                .map(refused -> refused.sentence(view.quantities()))
                .orElse(""));
        if (attempt.edit().isPresent()) {
            numbers.clear();
            note.setText("");
        }
        does.accept(attempt);
    }

    private void say(String words) {
        trouble.setText(words);
        layOut();
    }
}
