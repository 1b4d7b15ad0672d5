package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.desk.Later;
import lungfish.document.Document;
import lungfish.document.Part;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.LogEdits;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.FirstStartSheet;

/** The first start, step by step, with what gauge and jar should read; each step is ticked into the log of the room. */
final class FirstStartPane extends SideSheet {
    private final transient Later<Asked, Document.Section> later;
    private final Paragraph headline;
    private final DocumentView document;
    private transient Optional<Told> told = Optional.empty();

    private record Asked(Plan plan, Quantities quantities) {}

    /** All that is shown. */
    private record Told(Document.Section section, Look look, int widthPx) {}

    FirstStartPane(View view, Side side) {
        super(view, side, "First start");
        Catalogue catalogue = view.desk().shared().catalogue();
        later = asking(
                (asked, progress) -> FirstStartSheet.of(asked.plan(), catalogue, asked.quantities()), this::tell);
        headline = new Paragraph(view, Type::headline, Palette::ink, this::contentPx);
        headline.setName("start-headline");
        headline.setText("…");
        document = new DocumentView(view, this::contentPx, (step, day) -> view.refused(LogEdits.tick(step, day)));
        Stack stack = new Stack();
        stack.add(headline, "growx");
        stack.add(document, "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::ask);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void ask() {
        view().plan().ifPresent(plan -> later.ask(new Asked(plan, view().quantities())));
        tell();
    }

    private void tell() {
        boolean isCurrent = later.isCurrent() && view().desk().isCurrent();
        headline.inked(isCurrent ? Palette::ink : Palette::free);
        later.answer()
                .map(section -> new Told(section, view().look(), contentPx()))
                .filter(now -> !told.equals(Optional.of(now)))
                .ifPresent(this::show);
    }

    private void show(Told now) {
        told = Optional.of(now);
        List<Part.Step> steps = steps(now.section());
        long done = steps.stream().filter(step -> step.done().isPresent()).count();
        headline.setText(steps.isEmpty() ? "Nothing to start yet" : done + " of " + steps.size() + " steps done");
        document.show(List.of(now.section()));
    }

    private static List<Part.Step> steps(Document.Section section) {
        return section.parts().stream()
                .filter(Part.Checklist.class::isInstance)
                .flatMap(part -> ((Part.Checklist) part).steps().stream())
                .toList();
    }
}
