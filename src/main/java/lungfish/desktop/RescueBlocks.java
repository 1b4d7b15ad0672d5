package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import lungfish.desk.Later;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.Pictures;
import lungfish.drawing.SafePicture;
import lungfish.drawing.StandingPicture;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.plan.Progress;
import lungfish.report.RescueWords;
import lungfish.report.SecondWords;
import lungfish.report.StandingWords;
import lungfish.rescue.Cheapest;
import lungfish.rescue.Rescue;
import lungfish.rescue.Rescuing;
import lungfish.rescue.Second;
import lungfish.rescue.SecondLine;
import lungfish.rescue.SecondLines;
import lungfish.rescue.Tried;
import lungfish.rescue.Ways;
import lungfish.standing.StandingAnswer;

/**
 * What keeps the tanks alive: the cheapest sets first, each put into the room by one click; then each means by itself; then the
 * filters beside the air, and which of them may go; then how each way to give air stands up to failures.
 */
final class RescueBlocks extends Stack {
    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Later<Plan, Answer> later;
    private final transient BooleanSupplier isCurrent;
    private final JCheckBox each = new JCheckBox("Each by itself");
    private transient Optional<Told> told = Optional.empty();

    /** All parts; the first two empty where nothing gives air. */
    record Answer(Optional<Rescue> rescue, Optional<SecondLine> second, StandingAnswer ways) {}

    /** All that is shown. */
    private record Told(Optional<Answer> answer, boolean isCurrent, boolean isRunning, Look look, int widthPx) {}

    /**
     * Blocks of a sheet.
     *
     * @param later that the sheet asks, with {@link #answer}
     */
    RescueBlocks(View view, IntSupplier widthPx, Later<Plan, Answer> later) {
        this.view = view;
        this.widthPx = widthPx;
        this.later = later;
        this.isCurrent = () -> later.isCurrent() && view.desk().isCurrent();
        setName("rescue-blocks");
        each.setName("rescue-each");
        each.setOpaque(false);
        each.addActionListener(event -> tellAgain());
    }

    /** What is asked off the event thread. */
    static Answer answer(View view, Plan plan, Progress progress) {
        var catalogue = view.desk().shared().catalogue();
        Optional<Rescue> rescue = Rescuing.of(plan, catalogue, progress);
        return new Answer(
                rescue,
                rescue.flatMap(
                        there -> SecondLines.of(plan, catalogue, there.wantedS().si(), progress)),
                Ways.of(plan, catalogue));
    }

    /** Asks anew where the plan is another, and shows what is known. */
    void tell() {
        view.plan().ifPresent(later::ask);
        Told now =
                new Told(later.answer(), isCurrent.getAsBoolean(), later.isRunning(), view.look(), widthPx.getAsInt());
        if (!told.equals(Optional.of(now))) {
            told = Optional.of(now);
            removeAll();
            show(now);
            revalidate();
            repaint();
        }
    }

    private void tellAgain() {
        told = Optional.empty();
        tell();
    }

    private void show(Told now) {
        add(Line.title(view, "What keeps them alive"), "growx, wmin 0");
        Optional<Rescue> rescue = now.answer().flatMap(Answer::rescue);
        if (rescue.isEmpty()) {
            say(now.answer().isEmpty() ? "… every means is being tried" : "Nothing gives air in this room yet.");
            return;
        }
        RescueWords words = new RescueWords(rescue.get(), view.quantities(), view.names());
        soft(words.hazards());
        rescue.get().sets().forEach(set -> cheapest(rescue.get(), set, words));
        words.unfit().forEach(this::soft);
        add(each, "grow 0");
        if (each.isSelected()) {
            rescue.get().tried().forEach(tried -> tried(rescue.get(), tried, words));
        }
        now.answer().flatMap(Answer::second).ifPresent(this::second);
        now.answer().map(Answer::ways).ifPresent(this::ways);
        add(Line.title(view, "Take care with what is added"), "growx, wmin 0, gaptop " + view.px(4));
        words.cautions(view.desk().room()).forEach(this::soft);
    }

    private void cheapest(Rescue rescue, Cheapest cheapest, RescueWords words) {
        paragraph(words.headline(cheapest), Type::label, Palette::ink);
        cheapest.set().means().forEach(means -> say(words.says(means) + ", " + words.price(means.price())));
        words.lost(cheapest).forEach(this::soft);
        bars(words.headline(cheapest), (area, look, g) -> paint(cheapest, rescue, area, look, g));
        if (!cheapest.isNothing()) {
            add(button(cheapest), "grow 0");
        }
    }

    private JButton button(Cheapest cheapest) {
        String step = RescueWords.step(cheapest);
        JButton add = new JButton(step);
        add.setName("rescue-" + cheapest.goal().name().toLowerCase(Locale.ROOT));
        add.setEnabled(isCurrent.getAsBoolean());
        add.addActionListener(
                event -> view.attempt((room, selection) -> cheapest.set().added(room, step)));
        return add;
    }

    private static void paint(Cheapest cheapest, Rescue rescue, Rectangle2D area, Look look, Graphics2D g) {
        switch (cheapest.goal()) {
            case ALL -> SafePicture.paint(cheapest.outcome(), rescue.judged(), area, look, g);
            case ESSENTIAL -> SafePicture.paintEssential(cheapest.outcome(), rescue.essentialJudged(), area, look, g);
        }
    }

    private void tried(Rescue rescue, Tried tried, RescueWords words) {
        say(words.says(tried.set()) + ", " + words.price(tried.set().price()));
        bars(words.line(tried), (area, look, g) -> SafePicture.paint(tried.outcome(), rescue.judged(), area, look, g));
        soft(words.does(tried));
    }

    private void bars(String says, Pictures.Painting painting) {
        add(new Painted(view, says, widthPx, () -> SafePicture.height(view.look()), painting, isCurrent), "growx");
    }

    private void second(SecondLine line) {
        SecondWords words = new SecondWords(view.quantities());
        add(Line.title(view, "Second line"), "growx, wmin 0, gaptop " + view.px(4));
        say(words.headline(line));
        for (Second one : line.all()) {
            say((one.mayGo() ? "– " : "● ") + words.called(one) + ": " + words.verdict(one) + ".");
            soft(words.outages(one));
        }
    }

    private void ways(StandingAnswer ways) {
        StandingWords words = new StandingWords(ways, view.quantities());
        List<StandingPicture.Row> rows = words.rows();
        add(Line.title(view, "One blower, two, or many small pumps"), "growx, wmin 0, gaptop " + view.px(4));
        say(words.headline());
        String says = rows.stream().map(StandingPicture.Row::says).collect(Collectors.joining(". "));
        Pictures.Painting painting = (area, look, g) -> StandingPicture.paint(rows, area, look, g);
        add(
                new Painted(
                        view,
                        says,
                        widthPx,
                        () -> StandingPicture.height(rows, widthPx.getAsInt(), view.look()),
                        painting,
                        isCurrent),
                "growx");
        words.common().forEach(this::soft);
        soft(StandingWords.CAUTION);
    }

    private void say(String text) {
        paragraph(text, Type::body, Palette::ink);
    }

    private void soft(String text) {
        paragraph(text, Type::body, Palette::softInk);
    }

    private void paragraph(String text, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view, type, isCurrent.getAsBoolean() ? ink : Palette::free, widthPx);
        paragraph.setText(text);
        add(paragraph, "growx");
    }
}
