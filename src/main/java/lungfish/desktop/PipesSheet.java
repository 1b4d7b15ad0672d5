package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import lungfish.choice.Build;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.choice.PipesAnswer;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Edit;
import lungfish.plan.Planner;
import lungfish.report.BuildWords;
import lungfish.report.PipeWords;
import lungfish.room.Room;

/** Pipe sizes and layouts, each at a glance and at a click in the room; and the cheapest build that meets every wish. */
final class PipesSheet extends SideSheet {
    /** Text is no wider than it was measured for. */
    private static final String TEXT = "growx, wmin 0, wmax pref";

    private final transient Later<Asked, Optional<PipesAnswer>> later;
    private final Stack stack = new Stack();
    private final UnderWay underWay;
    private final Paragraph headline;
    private final Paragraph reason;
    private final PipesTable table;
    private final Paragraph axis;
    private final Paragraph chosen;
    private final JButton take = new JButton("Put it into the room");
    private final Paragraph cheapest;
    private final Paragraph build;
    private final Line pricesTitle;
    private final WishPrices prices;
    private final Paragraph assumed;
    private final JButton buildIt = new JButton("Build it so");
    private final Paragraph toKeep;
    private final JButton buildToKeep = new JButton("Build that instead");
    private transient Optional<PipesAnswer> shown = Optional.empty();

    /** All that the answer depends on. */
    record Asked(Room room) {}

    PipesSheet(View view, Side side) {
        super(view, side, "Pipes");
        Planner planner = new Planner(view.desk().shared().catalogue());
        later = asking((asked, progress) -> PipesAnswer.of(asked.room(), planner, progress), this::tell);
        underWay = new UnderWay(view, List.of(later));
        headline = paragraph("pipes-headline", Type::headline, Palette::ink);
        reason = paragraph("pipes-reason", Type::body, Palette::softInk);
        table = new PipesTable(view, this::tellChosen, this::take);
        axis = paragraph("pipes-axis", Type::body, Palette::softInk);
        chosen = paragraph("pipes-chosen", Type::body, Palette::ink);
        cheapest = paragraph("cheapest-headline", Type::headline, Palette::ink);
        build = paragraph("cheapest-build", Type::body, Palette::softInk);
        toKeep = paragraph("cheapest-to-keep", Type::body, Palette::ink);
        pricesTitle = Line.title(view, "");
        prices = new WishPrices(view, this::contentPx);
        assumed = paragraph("cheapest-assumed", Type::body, Palette::softInk);
        fill();
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::tell);
    }

    private Paragraph paragraph(String name, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view(), type, ink, this::contentPx);
        paragraph.setName(name);
        return paragraph;
    }

    private void fill() {
        stack.add(underWay, "growx");
        stack.add(headline, TEXT);
        stack.add(reason, TEXT);
        stack.add(table.header(), "growx, gapbottom 0");
        stack.add(table, "growx, gaptop 0");
        stack.add(axis, TEXT);
        stack.add(chosen, TEXT);
        stack.add(take, "growx 0");
        stack.add(cheapest, TEXT + ", gaptop " + view().px(16));
        stack.add(build, TEXT);
        stack.add(buildIt, "growx 0");
        stack.add(toKeep, TEXT);
        stack.add(buildToKeep, "growx 0");
        stack.add(pricesTitle, "growx, gaptop " + view().px(8));
        stack.add(prices, "growx, gaptop " + view().px(4));
        stack.add(assumed, TEXT);
        take.setName("take-pipe");
        take.addActionListener(event -> take());
        buildIt.setName("build-it");
        buildIt.addActionListener(event -> words().flatMap(BuildWords::shown).ifPresent(this::apply));
        buildToKeep.setName("build-to-keep");
        buildToKeep.addActionListener(
                event -> words().flatMap(BuildWords::lasting).ifPresent(this::apply));
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void tell() {
        later.ask(new Asked(view().desk().room()));
        shown = later.answer().flatMap(answer -> answer);
        underWay.tell();
        boolean isThere = shown.isPresent();
        List.of(
                        reason,
                        table,
                        table.header(),
                        axis,
                        chosen,
                        take,
                        cheapest,
                        build,
                        buildIt,
                        toKeep,
                        buildToKeep,
                        pricesTitle,
                        prices,
                        assumed)
                .forEach(part -> part.setVisible(isThere));
        PipeWords words = new PipeWords(view().quantities());
        headline.setText(shown.map(answer -> words.headline(answer.study())).orElse(nothing()));
        reason.setText(shown.map(answer -> words.reason(answer.study())).orElse(""));
        table.show(shown.map(PipesAnswer::study), !later.isCurrent());
        axis.setText(shown.map(answer -> axis(answer.study(), words)).orElse(""));
        buildIt.setEnabled(false);
        buildToKeep.setEnabled(false);
        shown.ifPresent(this::tellBuild);
        tellChosen();
        soften();
        stack.revalidate();
        stack.repaint();
    }

    private String nothing() {
        return later.answer().isEmpty() ? "" : "There is no pipe to compare yet: draw a main, and outlets for it.";
    }

    private static String axis(PipeStudy study, PipeWords words) {
        return "Each dot is a tap: how much the pipe takes on the way from the blower, from nothing at the left to "
                + words.pressure(PipeCell.mostPa(study))
                + " at the right; the ring is the worst. Beside the price: best to"
                + " worst tap. ● good enough, ○ good enough but felt, × not.";
    }

    private void tellChosen() {
        PipeWords words = new PipeWords(view().quantities());
        Optional<PipeResult> result = table.chosen();
        chosen.setText(result.map(words::whole).orElse(""));
        take.setEnabled(later.isCurrent()
                && result.filter(each -> !each.variant().asDrawn()).isPresent());
    }

    private void tellBuild(PipesAnswer answer) {
        BuildWords words = new BuildWords(answer.cheapest(), view().quantities());
        cheapest.setText(words.headline());
        build.setText(words.reason());
        toKeep.setText(words.toKeep().orElse(""));
        toKeep.setVisible(words.lasting().isPresent());
        buildToKeep.setVisible(words.lasting().isPresent());
        buildToKeep.setEnabled(later.isCurrent());
        pricesTitle.setText(words.pricesTitle());
        prices.show(words.prices());
        assumed.setText((words.assumed().orElse("") + " " + BuildWords.notCounted()).strip());
        buildIt.setEnabled(later.isCurrent()
                && words.shown()
                        .filter(each -> !each.room().equals(answer.study().room()))
                        .isPresent());
    }

    /** Figures of an older room are soft until the new ones are there. */
    private void soften() {
        boolean isOld = !later.isCurrent();
        List.of(headline, chosen, cheapest, toKeep).forEach(each -> each.inked(isOld ? Palette::free : Palette::ink));
        List.of(reason, axis, build, assumed).forEach(each -> each.inked(isOld ? Palette::free : Palette::softInk));
    }

    private void take() {
        table.chosen()
                .filter(each -> take.isEnabled())
                .ifPresent(result -> apply(
                        "Lay " + PipeWords.what(result.variant()),
                        result.variant().room()));
    }

    private Optional<BuildWords> words() {
        return shown.map(answer -> new BuildWords(answer.cheapest(), view().quantities()));
    }

    private void apply(Build that) {
        apply("Build " + BuildWords.what(that), that.room());
    }

    /** One step: the room that was asked about becomes the one that was found. */
    private void apply(String done, Room found) {
        Optional<Room> asked = shown.map(answer -> answer.study().room());
        table.requestFocusInWindow(); // the button that was pressed has nothing more to do
        view().desk().apply(new Edit(done, before -> asked.equals(Optional.of(before)) ? found : before));
    }

    @Override
    void takeFocus() {
        if (shown.isPresent()) {
            table.requestFocusInWindow();
        } else {
            super.takeFocus();
        }
    }
}
