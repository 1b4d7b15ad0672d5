package lungfish.report;

import static lungfish.document.Part.Column.figures;
import static lungfish.document.Part.Column.words;

import java.util.ArrayList;
import java.util.List;
import lungfish.document.Part;
import lungfish.measured.MeasuredRoom;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** A measured room as parts of a sheet. */
final class MeasuredSheet {
    private final MeasuredWords words;

    MeasuredSheet(Plan plan, Quantities quantities) {
        this.words = new MeasuredWords(quantities, new Names(plan.room()));
    }

    List<Part> parts(MeasuredRoom measured) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Paragraph(words.headline(measured) + ". " + words.sure(measured)));
        words.doubtful(measured).map(Part.Paragraph::new).ifPresent(parts::add);
        parts.add(suspects(measured));
        words.places(measured).forEach(each -> parts.add(new Part.Paragraph(each)));
        words.corrections(measured).forEach(each -> parts.add(new Part.Paragraph(each)));
        words.unused(measured).map(Part.Paragraph::new).ifPresent(parts::add);
        words.next(measured).ifPresent(next -> parts.add(new Part.Paragraph("Read next. " + next)));
        return parts;
    }

    private Part.Grid suspects(MeasuredRoom measured) {
        Grids grid = new Grids(
                "suspects", "What may have happened since the valves were set", words("What"), figures("In 100"));
        MeasuredWords.worth(measured)
                .forEach(suspect ->
                        grid.row(words.culprit(suspect.culprit()), MeasuredWords.odds(suspect.probability())));
        return grid.grid();
    }
}
