package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.measured.AsMeasured;
import lungfish.measured.Fitted;
import lungfish.measured.MeasuredRoom;
import lungfish.measured.Suspect;
import lungfish.measured.Verdict;
import lungfish.plan.Plan;
import lungfish.report.MeasuredWords;

/** What the readings say of the room: what most likely changed, how sure that is, what to read next. */
final class LogFound extends Stack {
    private final transient View view;
    private final transient IntSupplier widthPx;
    private final JButton open = new JButton("Open the room as measured");
    private transient Optional<Measured> measured = Optional.empty();

    /** A room, and what was measured in it. */
    record Measured(Plan plan, MeasuredRoom room) {}

    LogFound(View view, IntSupplier widthPx) {
        this.view = view;
        this.widthPx = widthPx;
        setName("log-found");
        open.setName("log-open-measured");
        open.setToolTipText("In a window of its own: every other question can be asked of it");
        open.addActionListener(event -> open());
    }

    /** Shows this from now on. */
    void show(Measured found, boolean isCurrent) {
        measured = Optional.of(found);
        MeasuredWords words = new MeasuredWords(view.quantities(), view.names());
        MeasuredRoom room = found.room();
        boolean isBad = room.verdict() == Verdict.LIKELY || room.verdict() == Verdict.CONTRADICTION;
        removeAll();
        add(Line.title(view, "What changed since the valves were set"), "gaptop " + view.px(8));
        say(
                "found-headline",
                words.headline(room),
                Type::headline,
                !isCurrent ? Palette::free : isBad ? Palette::accent : Palette::ink);
        say("found-sure", words.sure(room), Type::body, Palette::softInk);
        words.doubtful(room).ifPresent(each -> say("found-doubtful", each, Type::body, Palette::ink));
        suspects(room, words);
        words.places(room).forEach(each -> say("found-place", each, Type::body, Palette::ink));
        words.next(room).ifPresent(each -> say("found-next", "Read next. " + each, Type::body, Palette::ink));
        words.corrections(room).forEach(each -> say("found-correction", each, Type::body, Palette::softInk));
        words.unused(room).ifPresent(each -> say("found-unused", each, Type::body, Palette::softInk));
        open.setEnabled(isCurrent && room.fitted().isPresent());
        add(open, "growx 0");
        revalidate();
        repaint();
    }

    /** One alone is said in the headline already. */
    private void suspects(MeasuredRoom room, MeasuredWords words) {
        List<Suspect> worth = MeasuredWords.worth(room);
        if (worth.size() < 2) {
            return;
        }
        worth.forEach(suspect -> say(
                "found-suspect",
                MeasuredWords.odds(suspect.probability()) + " in 100: " + words.culprit(suspect.culprit()),
                Type::body,
                Palette::ink));
    }

    private void say(String name, String text, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view, type, ink, widthPx);
        paragraph.setName(name);
        paragraph.setText(text);
        add(paragraph, "growx, wmin 0");
    }

    private void open() {
        WindowPane pane = (WindowPane) SwingUtilities.getAncestorOfClass(WindowPane.class, this);
        Optional<Fitted> fitted = measured.flatMap(each -> each.room().fitted());
        if (pane != null && fitted.isPresent()) {
            pane.home()
                    .openRoom(
                            "Room as measured",
                            AsMeasured.room(measured.orElseThrow().plan(), fitted.get()));
        }
    }
}
