package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JToggleButton;
import lungfish.catalogue.Catalogue;
import lungfish.desk.Later;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.ReadingsPicture;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.logbook.Forecast;
import lungfish.logbook.Logbook;
import lungfish.measured.Culprit;
import lungfish.measured.MeasuredRoom;
import lungfish.measured.Verdict;
import lungfish.plan.Plan;
import lungfish.report.LogbookWords;
import lungfish.room.Log;

/**
 * What was read and done in the room over time: what it says of the blower, what is to be done again, what writes more down,
 * and all that is written down.
 */
final class LogSheet extends SideSheet {
    private final transient Later<Asked, Logbook> later;
    private final transient Later<Asked, Optional<LogFound.Measured>> measuring;
    private final LogFound found;
    private final Paragraph headline;
    private final Paragraph says;
    private final JToggleButton write = new JToggleButton("Write something down");
    private final LogForm form;
    private final LogDues dues;
    private final Painted picture;
    private final Paragraph leak;
    private final LogEntries entries;
    private transient Optional<Told> told = Optional.empty();
    private transient Optional<Read> read = Optional.empty();

    private record Asked(Plan plan, LocalDate today) {}

    /** All that the list of entries depends on. */
    private record Told(Log log, Look look, int widthPx) {}

    /** All that what is said of them depends on. */
    private record Read(
            Optional<Logbook> logbook,
            Optional<LogFound.Measured> measured,
            boolean isMeasured,
            boolean isEmpty,
            boolean isCurrent,
            Look look,
            int widthPx) {}

    LogSheet(View view, Side side) {
        super(view, side, "Log: what was read, and what was done");
        Catalogue catalogue = view.desk().shared().catalogue();
        later = asking((asked, progress) -> Logbook.of(asked.plan(), catalogue, asked.today()), this::tell);
        measuring = asking(
                (asked, progress) -> MeasuredRoom.of(asked.plan(), catalogue, asked.today())
                        .map(room -> new LogFound.Measured(asked.plan(), room)),
                this::tell);
        found = new LogFound(view, this::contentPx);
        headline = paragraph("log-headline", Type::headline, Palette::ink);
        says = paragraph("log-says", Type::body, Palette::ink);
        dues = new LogDues(view, this::contentPx);
        picture = new Painted(
                view,
                "Readings over time",
                this::contentPx,
                () -> shown().map(each -> ReadingsPicture.height(each, view.look()))
                        .orElse(0.0),
                (area, look, g) -> shown().ifPresent(each -> ReadingsPicture.paint(each, area, look, g)),
                this::isCurrent);
        picture.setName("readings");
        leak = paragraph("log-leak", Type::body, Palette::ink);
        entries = new LogEntries(view, this::contentPx, this::take);
        form = new LogForm(view, this::contentPx, this::take);
        write.setName("log-write");
        write.addActionListener(event -> openForm());
        write.setSelected(view.desk().room().log().isEmpty());
        form.setVisible(write.isSelected());
        Stack stack = new Stack();
        stack.add(headline, "growx");
        stack.add(says, "growx");
        stack.add(write, "growx 0");
        stack.add(form, "growx, wmin 0");
        stack.add(found, "growx, wmin 0");
        stack.add(dues, "growx, wmin 0");
        stack.add(picture, "growx, wmin 0");
        stack.add(leak, "growx");
        stack.add(entries, "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::ask);
    }

    private Paragraph paragraph(String name, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view(), type, ink, this::contentPx);
        paragraph.setName(name);
        return paragraph;
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void take(Attempt attempt) {
        view().refused(attempt);
    }

    /** What is worth a picture. */
    private Optional<Logbook> shown() {
        return read.flatMap(Read::logbook).filter(ReadingsPicture::isWorthIt);
    }

    private void openForm() {
        form.setVisible(write.isSelected());
        if (write.isSelected()) {
            form.takeFocus();
        }
        revalidate();
    }

    private boolean isCurrent() {
        return later.isCurrent() && view().desk().isCurrent();
    }

    private void ask() {
        view().plan().ifPresent(plan -> {
            later.ask(new Asked(plan, view().today()));
            measuring.ask(new Asked(plan, view().today()));
        });
        tell();
    }

    private void tell() {
        Log log = view().desk().room().log();
        Told now = new Told(log, view().look(), contentPx());
        if (!told.equals(Optional.of(now))) {
            told = Optional.of(now);
            entries.show(log);
        }
        Read said = new Read(
                later.answer(),
                measuring.answer().flatMap(each -> each),
                measuring.isCurrent() && view().desk().isCurrent(),
                log.isEmpty(),
                isCurrent(),
                view().look(),
                contentPx());
        if (!read.equals(Optional.of(said))) {
            read = Optional.of(said);
            say(said);
        }
    }

    private void say(Read said) {
        Optional<Logbook> logbook = said.logbook().filter(each -> !said.isEmpty());
        dues.setVisible(logbook.isPresent());
        found.setVisible(said.measured().isPresent() && !said.isEmpty());
        said.measured().ifPresent(each -> found.show(each, said.isMeasured()));
        picture.setVisible(false);
        leak.setVisible(false);
        if (said.isEmpty()) {
            headline.setText("Nothing written down yet");
            says.setText(LogbookWords.FIRST);
            headline.inked(Palette::ink);
        } else {
            logbook.ifPresentOrElse(each -> say(each, said.isCurrent()), () -> headline.setText("…"));
        }
        revalidate();
        repaint();
    }

    /** The forecast knows of no leaks: it takes what they let out for a loss of the blower. */
    private String leaks() {
        boolean leaks = read.flatMap(Read::measured)
                .filter(each -> each.room().verdict() == Verdict.LIKELY)
                .filter(each -> each.room().likeliest().culprit().kind() == Culprit.Kind.LEAK)
                .isPresent();
        return leaks ? " That takes the leak for a loss of the blower: mend it, and read again." : "";
    }

    private void say(Logbook logbook, boolean isCurrent) {
        LogbookWords words = new LogbookWords(logbook, view().quantities(), view().names());
        boolean isBelow = logbook.forecast().kind() == Forecast.Kind.BELOW;
        headline.setText(words.headline());
        headline.inked(isCurrent ? isBelow ? Palette::accent : Palette::ink : Palette::free);
        says.setText(words.forecast() + leaks());
        leak.setText(words.leak().orElse(""));
        leak.setVisible(words.leak().isPresent());
        dues.show(logbook, words);
        picture.setVisible(shown().isPresent());
        picture.getAccessibleContext().setAccessibleName("Readings over time. " + words.forecast());
    }
}
