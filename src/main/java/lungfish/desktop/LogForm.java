package lungfish.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.time.DateTimeException;
import java.time.LocalDate;
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
    private static final int GAP = 10;

    /** What is done to outlets, to all or to some. */
    private static final Set<Service.Kind> TO_OUTLETS = Set.of(
            Service.Kind.DEVICE_CLEANED,
            Service.Kind.DEVICE_EXCHANGED,
            Service.Kind.CHECK_VALVE_EXCHANGED,
            Service.Kind.VALVES_SET);

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Consumer<Attempt> does;
    private final JTextField day;
    private transient LocalDate offered;
    private final JTextField note = new JTextField(12);
    private final Choice<LogKinds> kind = new Choice<>("What was read");
    private final Choice<OutletId> outlet = new Choice<>("Outlet");
    private final Choice<Service.Kind> service = new Choice<>("What was done");
    private final transient LogWhere where;
    private final LogNumbers numbers;
    private final LogShut shut;
    private final Line which;
    private final Paragraph trouble;
    private transient Optional<Laid> laid = Optional.empty();

    /** How it is laid. */
    private record Laid(int columns, int gapPx) {}

    LogForm(View view, IntSupplier widthPx, Consumer<Attempt> does) {
        this.view = view;
        this.widthPx = widthPx;
        this.does = does;
        this.offered = view.today();
        this.day = new JTextField(offered.toString(), 10);
        this.numbers = new LogNumbers(view);
        this.shut = new LogShut(view);
        this.where = new LogWhere(view, this::layOut);
        this.which = Line.reason(view);
        this.trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        setOpaque(false);
        setName("log-form");
        day.setName("log-day");
        day.getAccessibleContext().setAccessibleName("Day, as 2026-03-01");
        note.getAccessibleContext().setAccessibleName("Note");
        note.setName("log-note");
        which.setName("log-which");
        trouble.setName("log-trouble");
        kind.offer(List.of(LogKinds.values()), each -> Sentences.capital(each.words()), LogKinds.JAR::equals);
        service.offer(
                List.of(Service.Kind.values()),
                each -> Sentences.capital(LogKinds.done(each)),
                Service.Kind.DEVICE_CLEANED::equals);
        kind.addActionListener(event -> layOut());
        service.addActionListener(event -> tellWhich());
        view.follow(this, this::tell);
        view.followMarks(this, this::tellWhich);
    }

    /** Takes the focus to its first field. */
    void takeFocus() {
        kind.requestFocusInWindow();
    }

    private void tell() {
        outlet.offer(
                view.desk().room().seats().stream()
                        .map(seat -> seat.outlet().id())
                        .toList(),
                id -> view.names().of(id.part()).replaceFirst("^outlet ", ""), // the field says so already
                id -> true);
        offerToday();
        where.tell();
        shut.tell();
        layOut();
    }

    /** A window may stay open over midnight; a day that somebody typed stays. */
    private void offerToday() {
        if (day.getText().strip().equals(offered.toString())) {
            offered = view.today();
            day.setText(offered.toString());
        }
    }

    /** Laid anew only where the width or the letters are others; what has the focus keeps it. */
    private void layOut() {
        Laid now = new Laid(Math.max(1, widthPx.getAsInt() / view.px(COLUMN)), view.px(GAP));
        if (!laid.equals(Optional.of(now))) {
            laid = Optional.of(now);
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            boolean isHere = owner != null && isAncestorOf(owner);
            lay(now);
            if (isHere) {
                owner.requestFocusInWindow(); // a bar came up beside the sheet while somebody typed
            }
        }
        show(outlet, kind() == LogKinds.JAR);
        show(where.field(), kind() == LogKinds.GAUGE);
        show(where.along(), kind() == LogKinds.GAUGE && where.isTyped());
        for (LogKinds each : LogKinds.values()) {
            numbers.fields(each).forEach(number -> show(number.field(), each == kind()));
        }
        trouble.setVisible(!trouble.getText().isEmpty());
        tellWhich();
        revalidate();
        repaint();
    }

    private void lay(Laid now) {
        removeAll();
        setLayout(new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + now.columns() + ", gap " + now.gapPx() + " " + view.px(8),
                "[0:100:, grow, fill]".repeat(now.columns())));
        field("Day", day);
        field("Note", note);
        add(Line.title(view, "Something read"), "newline, spanx, gaptop " + view.px(4));
        field("What was read", kind);
        field("Outlet", outlet);
        field("Where the gauge is", where.field());
        field("From the start of the pipe", where.along());
        for (LogKinds each : LogKinds.values()) {
            numbers.fields(each).forEach(number -> field(number.label(), number.field()));
        }
        add(shut, "newline, spanx, wmin 0");
        add(button("Write it down", this::read), "newline, spanx, growx 0");
        add(Line.title(view, "Something done"), "newline, spanx, gaptop " + view.px(4));
        field("What was done", service);
        add(button("Write the service down", this::serve), "aligny bottom, growx 0");
        add(which, "newline, spanx, wmin 0");
        add(trouble, "newline, spanx, wmin 0");
    }

    /** With its title. */
    private static void show(JComponent field, boolean isShown) {
        field.getParent().setVisible(isShown);
    }

    private LogKinds kind() {
        return kind.chosen().orElse(LogKinds.JAR);
    }

    private Service.Kind done() {
        return service.chosen().orElse(Service.Kind.DEVICE_CLEANED);
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

    /** Of which outlets a service is. */
    private void tellWhich() {
        int many = view.chosenOutlets().size();
        which.setVisible(TO_OUTLETS.contains(done()));
        which.setText(
                many == 0
                        ? "Of all outlets; choose some on the drawing for those alone"
                        : "Of the " + Sentences.counted(many, "outlet") + " chosen on the drawing");
    }

    private void read() {
        boolean isUnderstood = numbers.take(kind()) && (kind() != LogKinds.GAUGE || where.take());
        Optional<Reading.Measured> measured = numbers.measured(kind(), outlet.chosen(), where.at());
        Optional<LocalDate> on = day();
        if (on.isEmpty()) {
            say("The day is not one: type it as 2026-03-01.");
        } else if (!isUnderstood || measured.isEmpty()) {
            say("Type every number first: " + String.join(", ", kind().numbers()) + ".");
        } else if (kind() == LogKinds.GAUGE && !where.isWhole()) {
            say("Type how far the gauge is from the start of the pipe.");
        } else {
            take(LogEdits.read(view.desk().room(), on.get(), measured.get(), shut.shut(), note.getText()));
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
                        done(),
                        TO_OUTLETS.contains(done()) ? view.chosenOutlets() : List.of(),
                        Optional.empty(),
                        said.isEmpty() ? Optional.empty() : Optional.of(said))));
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
            shut.clear();
            note.setText("");
        }
        does.accept(attempt);
    }

    private void say(String words) {
        trouble.setText(words);
        layOut();
    }
}
