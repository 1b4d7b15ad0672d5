package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import lungfish.build.BuildPlan;
import lungfish.build.PartsList;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.ThreadClass;
import lungfish.desk.Later;
import lungfish.document.Document;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.BuildingEdits;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.report.BuildSheet;
import net.miginfocom.swing.MigLayout;

/** What is bought, cut, drilled and set to build the room; what the keeper pays and buys in can be said here. */
final class BuildSheetPane extends SideSheet {
    /** What is drawn stands beside this sheet already. */
    private static final String DRAWINGS = "drawings";

    private static final String PARTS = "parts";
    private static final int FIELD = 170;

    private final transient Later<Asked, Answer> later;
    private final Paragraph headline;
    private final Paragraph reason;
    private final Paragraph trouble;
    private final PropertyGrid fields;
    private final PartPrices prices;
    private final DocumentView document;
    private transient Optional<Told> told = Optional.empty();

    private record Asked(Plan plan, Quantities quantities) {}

    private record Answer(BuildPlan build, Document document) {}

    /** All that is shown. */
    private record Told(Answer answer, boolean isCurrent, int widthPx, float bodyPt) {}

    BuildSheetPane(View view, Side side) {
        super(view, side, "Build it");
        Catalogue catalogue = view.desk().shared().catalogue();
        later = asking((asked, progress) -> answer(asked, catalogue), this::tell);
        Stack stack = new Stack();
        headline = paragraph(stack, "build-headline");
        headline.setText("…");
        reason = new Paragraph(view, Type::body, Palette::softInk, this::contentPx);
        stack.add(reason, "growx");
        stack.add(buttons(view), "growx");
        trouble = new Paragraph(view, Type::body, Palette::accent, this::contentPx);
        trouble.setName("build-trouble");
        trouble.setVisible(false);
        stack.add(trouble, "growx");
        fields = new PropertyGrid(view, this::contentPx);
        stack.add(fields, "growx, wmin 0");
        prices = new PartPrices(view, this::contentPx, this::take);
        stack.add(prices, "growx, wmin 0");
        document = new DocumentView(view, this::contentPx, (step, day) -> {});
        stack.add(document, "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        fields.fill(said(catalogue), "", Math.max(1, contentPx() / view.px(FIELD)));
        view.follow(this, this::ask);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private Paragraph paragraph(Stack stack, String name) {
        Paragraph paragraph = new Paragraph(view(), Type::headline, Palette::ink, this::contentPx);
        paragraph.setName(name);
        stack.add(paragraph, "growx");
        return paragraph;
    }

    private JPanel buttons(View view) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap " + view.px(8) + " 0"));
        row.setOpaque(false);
        row.add(button("Save…", "Pages, a page for a browser, or lists for a spreadsheet", SaveReport.class));
        row.add(button("Print…", "On A4 or Letter, as the units shown go", PrintReport.class));
        return row;
    }

    private JButton button(String word, String tip, Class<? extends Act> act) {
        JButton button = new JButton(word);
        button.setName("build-" + act.getSimpleName());
        button.setToolTipText(tip);
        button.addActionListener(event -> pane().acts().the(act).act());
        return button;
    }

    private WindowPane pane() {
        return (WindowPane) SwingUtilities.getAncestorOfClass(WindowPane.class, this);
    }

    private static List<Property> said(Catalogue catalogue) {
        List<Property> said = new ArrayList<>();
        said.add(Properties.amount("Pipe is bought in", BuildingEdits.STOCK, Property.Usual.words("as usual")));
        said.add(Properties.amount("The saw takes", BuildingEdits.KERF, Property.Usual.words("assumed")));
        said.add(Properties.amount("Bought to spare", BuildingEdits.SPARE, Property.Usual.words("assumed")));
        said.add(new Property.OneOf<>(
                "Thread of the taps",
                Stream.concat(
                                Stream.of(Optional.<String>empty()),
                                catalogue.building().threads().stream()
                                        .map(ThreadClass::id)
                                        .map(Optional::of))
                        .toList(),
                id -> id.flatMap(catalogue.building()::thread)
                        .map(ThreadClass::name)
                        .orElse("as the pipe's standard goes"),
                room -> new Property.Said<>(List.of(room.building().thread())),
                (room, id) -> BuildingEdits.thread(id)));
        return said;
    }

    private static Answer answer(Asked asked, Catalogue catalogue) {
        BuildPlan build = BuildPlan.of(asked.plan(), catalogue);
        return new Answer(build, BuildSheet.of(asked.plan(), build, catalogue, asked.quantities(), List.of()));
    }

    private void take(Attempt attempt) {
        String said = view().refused(attempt);
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    private void ask() {
        view().plan().ifPresent(plan -> later.ask(new Asked(plan, view().quantities())));
        tell();
    }

    private void tell() {
        boolean isCurrent = later.isCurrent() && view().desk().isCurrent();
        headline.inked(isCurrent ? Palette::ink : Palette::free);
        later.answer()
                .map(answer -> new Told(
                        answer,
                        isCurrent,
                        contentPx(),
                        view().look().type().body().getSize2D()))
                .filter(now -> !told.equals(Optional.of(now)))
                .ifPresent(this::show);
    }

    private void show(Told now) {
        told = Optional.of(now);
        PartsList parts = now.answer().build().parts();
        headline.setText(view().quantities().show(parts.total(), Dimension.MONEY) + " of parts");
        reason.setText(now.answer().document().subtitle());
        prices.show(parts);
        document.show(now.answer().document().sections().stream()
                .filter(section ->
                        !section.key().equals(DRAWINGS) && !section.key().equals(PARTS))
                .toList());
        revalidate();
        repaint();
    }
}
