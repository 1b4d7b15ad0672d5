package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import lungfish.build.BuildPlan;
import lungfish.build.Piece;
import lungfish.catalogue.Catalogue;
import lungfish.document.Document;
import lungfish.document.Document.Section;
import lungfish.document.Figure;
import lungfish.document.Part;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Rack;

/** All that one needs at hand to buy and build a room as planned, as a document. */
public final class BuildSheet {
    private static final Set<Code> OF_TAPS = Set.of(
            Code.TAP_AT_FITTING, Code.WALL_THIN_FOR_THREAD, Code.NO_THREAD_IN_SCHEDULE_40, Code.NO_THREAD_IN_WARM_PIPE);

    private final Plan plan;
    private final BuildPlan build;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final Names names;
    private final Sentences sentences;

    private BuildSheet(Plan plan, BuildPlan build, Catalogue catalogue, Quantities quantities) {
        this.plan = plan;
        this.build = build;
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.names = new Names(plan.room());
        this.sentences = new Sentences(quantities, names);
    }

    /** The sheet of a plan. */
    public static Document of(Plan plan, Catalogue catalogue, Quantities quantities) {
        return of(plan, BuildPlan.of(plan, catalogue), catalogue, quantities, List.of());
    }

    /**
     * The same with more sections before the last: a first start, what was measured.
     *
     * @param build that of the plan
     */
    public static Document of(
            Plan plan, BuildPlan build, Catalogue catalogue, Quantities quantities, List<Section> more) {
        return new BuildSheet(plan, build, catalogue, quantities).document(more);
    }

    private Document document(List<Section> more) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("drawings", "Drawings", false, drawings()));
        sections.add(new Section(
                "cautions",
                "Before you begin",
                true,
                new BuildCautions(plan, build, catalogue, quantities, sentences).parts()));
        sections.add(
                new Section("parts", "What to buy", true, new PartsWords(plan, build, quantities, sentences).parts()));
        sections.add(new Section("cuts", "What to cut", true, cuts()));
        sections.add(new Section("taps", "Where to tap", true, taps()));
        sections.add(new Section(
                "blower",
                "The blower and its fittings",
                true,
                new PlacingWords(plan.room(), build, catalogue, quantities, names).parts()));
        sections.add(new Section(
                "settings", "Setting the outlets", true, new SettingWords(plan, build, catalogue, quantities).parts()));
        sections.addAll(more);
        return new Document("Build sheet: " + plan.room().name(), subtitle(), sections);
    }

    private String subtitle() {
        double pipeM = build.pieces().stream().mapToDouble(Piece::cutM).sum();
        return Sentences.counted(plan.outlets().size(), "outlet") + ", " + quantities.show(pipeM, Dimension.LENGTH)
                + " of pipe in " + Sentences.counted(build.pieces().size(), "piece") + ", parts for some "
                + quantities.show(build.parts().total(), Dimension.MONEY);
    }

    private List<Part> drawings() {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Picture(
                new Figure.RoomFromAbove(),
                "The room from above",
                "The room from above with its racks, its pipe and its taps"));
        for (Rack rack : plan.room().racks()) {
            String name = rack.isPlanned() ? rack.name() + " (planned: its taps are not in the lists)" : rack.name();
            parts.add(new Part.Picture(
                    new Figure.RackFront(rack.id()), name + ", from the front", "The front of " + rack.name()));
        }
        return parts;
    }

    private List<Part> cuts() {
        List<Part> parts = new ArrayList<>(told(finding -> !OF_TAPS.contains(finding.code())));
        parts.addAll(new CutWords(build, catalogue, quantities, names).parts());
        return parts;
    }

    private List<Part> taps() {
        List<Part> parts = new ArrayList<>(told(finding -> OF_TAPS.contains(finding.code())));
        parts.addAll(new TapWords(build, plan.room(), quantities, names).parts());
        return parts;
    }

    private List<Part> told(Predicate<Finding> which) {
        return build.findings().stream()
                .filter(which)
                .<Part>map(finding -> new Part.Paragraph(sentences.says(finding) + " " + sentences.mend(finding)))
                .toList();
    }
}
