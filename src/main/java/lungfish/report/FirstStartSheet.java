package lungfish.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.commissioning.Expected;
import lungfish.commissioning.FirstStart;
import lungfish.commissioning.FirstStep;
import lungfish.commissioning.Lack;
import lungfish.document.Document.Section;
import lungfish.document.Part;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Assumable;

/** The first start of a room as a checklist, in words, with what is ticked in the room's log. */
public final class FirstStartSheet {
    private static final String TITLE = "First start";

    private final Plan plan;
    private final FirstStart start;
    private final Quantities quantities;
    private final FirstStartWords words;

    private FirstStartSheet(Plan plan, FirstStart start, Catalogue catalogue, Quantities quantities) {
        this.plan = plan;
        this.start = start;
        this.quantities = quantities;
        this.words = new FirstStartWords(plan, start, catalogue, quantities);
    }

    /** The section of a plan; where there is no first start it says why. */
    public static Section of(Plan plan, Catalogue catalogue, Quantities quantities) {
        return of(plan, FirstStart.of(plan, catalogue), catalogue, quantities);
    }

    /**
     * The same of a first start that is known.
     *
     * @param start that of the plan
     */
    public static Section of(Plan plan, Optional<FirstStart> start, Catalogue catalogue, Quantities quantities) {
        List<Part> parts = start.map(found -> new FirstStartSheet(plan, found, catalogue, quantities).parts(catalogue))
                .orElseGet(() -> List.of(new Part.Paragraph(says(Lack.of(plan).orElse(Lack.UNSOLVED)))));
        return new Section("start", TITLE, true, parts);
    }

    /** Why there is no first start, and how to get one. */
    public static String says(Lack lack) {
        return switch (lack) {
            case UNSOLVED -> "There is nothing to start yet: draw a pipe, outlets and a blower first.";
            case ABOVE_CONTINUOUS ->
                "No first start: the planned blower would be held above the pressure that it bears all day. Plan a bleed, or"
                        + " another blower, first.";
            case BELOW_LEAST_FLOW ->
                "No first start: the planned blower would pass less air than must always pass, and would overheat. Plan a bleed,"
                        + " or a smaller blower, first.";
            case TOO_WEAK ->
                "No first start: even new, and with clean devices, the planned blower does not reach the worst-served outlet at"
                        + " the pressure to which it is bled. Hold more pressure, or plan another blower, first.";
        };
    }

    private List<Part> parts(Catalogue catalogue) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Paragraph(how(catalogue)));
        parts.add(new Part.Caution(BuildCautions.MAINS));
        parts.add(new Part.Caution("Never let a gauge at a blower read more than "
                + quantities.show(start.limitPa(), Dimension.PRESSURE)
                + " for longer than it takes to open the bleed: that is what the blower bears all day. Never shut the bleed while"
                + " the outlets are shut and a blower runs."));
        if (start.steps().stream().anyMatch(step -> step.kind() == FirstStep.Kind.CURED)) {
            parts.add(new Part.Caution(BuildCautions.LIQUIDS_ONLY));
        }
        parts.add(new Part.Checklist(start.steps().stream().map(this::step).toList()));
        return parts;
    }

    private String how(Catalogue catalogue) {
        double jarM3 = plan.room()
                .wishes()
                .jarM3()
                .orElse(catalogue.assumed(Assumable.JAR).si());
        String bleed = start.hasBleed()
                ? ""
                : " The drain at the low point stands in for the bleed that is spoken of, and ends shut.";
        return "In this order, with the blower new and the devices clean; a jar is an inverted one of "
                + quantities.show(jarM3, Dimension.VOLUME) + ", held over the bubbles." + bleed
                + " How far a reading may be off (±): a gauge by "
                + quantities.show(Expected.GAUGE_PA, Dimension.PRESSURE)
                + ", a jar by " + quantities.show(Expected.JAR_SHARE, Dimension.SHARE)
                + ", a blower against its data sheet by what the room says of it; several together by the root of the sum of"
                + " their squares.";
    }

    private Part.Step step(FirstStep step) {
        return new Part.Step(
                step.key(),
                words.action(step),
                words.detail(step),
                words.expected(step),
                plan.room().log().done(step.key()).map(LocalDate::toString));
    }
}
