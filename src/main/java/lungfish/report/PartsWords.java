package lungfish.report;

import static lungfish.document.Part.Column.figures;
import static lungfish.document.Part.Column.words;

import java.util.ArrayList;
import java.util.List;
import lungfish.build.BuildPlan;
import lungfish.build.Cutting;
import lungfish.build.PartsList;
import lungfish.build.PartsList.Group;
import lungfish.build.PartsList.Line;
import lungfish.build.PartsList.Unit;
import lungfish.document.Part;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Severity;

/** What is bought, as a list with its total. */
final class PartsWords {
    private static final double FOOT_M = 0.3048;

    private final Plan plan;
    private final BuildPlan build;
    private final Quantities quantities;
    private final Sentences sentences;

    PartsWords(Plan plan, BuildPlan build, Quantities quantities, Sentences sentences) {
        this.plan = plan;
        this.build = build;
        this.quantities = quantities;
        this.sentences = sentences;
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        before().forEach(text -> parts.add(new Part.Paragraph(text)));
        parts.add(grid());
        parts.add(new Part.Paragraph(prices()));
        List<String> assumed = build.assumptions().stream().map(sentences::says).toList();
        if (!assumed.isEmpty()) {
            parts.add(new Part.Paragraph("Assumed: " + String.join("; ", assumed) + "."));
        }
        return parts;
    }

    /** What must be settled before anything is bought. */
    private List<String> before() {
        List<String> before = new ArrayList<>();
        plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKING)
                .forEach(finding -> before.add(
                        "Mend this before you buy: " + sentences.says(finding) + " " + sentences.mend(finding)));
        if (plan.keepPumps()) {
            before.add("By these figures the small pumps may stay. Look at the plan again before you buy.");
        }
        return before;
    }

    private Part.Grid grid() {
        Grids grid = new Grids(
                "parts",
                "Parts list",
                words("For"),
                words("Part"),
                words("Size"),
                figures("Needed"),
                figures("There"),
                figures("Spare"),
                figures("Buy"),
                figures(quantities.units() == DisplayUnits.US ? "Each, or a foot" : "Each, or a metre"),
                figures("Cost"));
        build.parts().lines().forEach(line -> row(grid, line));
        return grid.totalled(
                "Total", "", "", "", "", "", "", "", money(build.parts().total()));
    }

    private void row(Grids grid, Line line) {
        grid.row(
                group(line.group()),
                line.name(),
                line.detail(),
                amount(line, line.counted()),
                line.there() > 0 ? amount(line, line.there()) : "",
                line.spare() > 0 ? amount(line, line.spare()) : "",
                line.group() == Group.PIPE ? stocks(line) : amount(line, line.buy()),
                price(line),
                cost(line));
    }

    static String group(Group group) {
        return switch (group) {
            case PIPE -> "Pipe";
            case FITTINGS -> "Fittings";
            case TAPS -> "Taps and airline";
            case OUTLETS -> "Outlets";
            case BLOWER -> "Blower";
            case SMALL_PARTS -> "Small parts";
            case LATER -> "Later, not in the total";
        };
    }

    private String amount(Line line, double amount) {
        return line.unit() == Unit.METRES
                ? quantities.show(amount, Dimension.LENGTH)
                : quantities.show(amount, Dimension.COUNT);
    }

    private String stocks(Line line) {
        Cutting cutting = build.cuts().get(line.key());
        return cutting == null
                ? amount(line, line.buy())
                : cutting.stocks().size() + " × " + quantities.show(cutting.stockM(), Dimension.LENGTH);
    }

    private String price(Line line) {
        if (line.price().isEmpty()) {
            return line.buy() > 0 ? "not known" : "";
        }
        boolean isFeet = line.unit() == Unit.METRES && quantities.units() == DisplayUnits.US;
        return money(line.price().getAsDouble() * (isFeet ? FOOT_M : 1)) + (line.ownPrice() ? " *" : "");
    }

    private String cost(Line line) {
        return line.buy() > 0 && line.cost().isPresent() ? money(line.cost().getAsDouble()) : "";
    }

    private String money(double amount) {
        return quantities.show(amount, Dimension.MONEY);
    }

    private String prices() {
        PartsList parts = build.parts();
        boolean own = parts.lines().stream().anyMatch(Line::ownPrice);
        String unpriced = parts.unpriced() == 0
                ? ""
                : " " + Sentences.counted(parts.unpriced(), "line") + " without a price are not in the total.";
        return "Prices are typical of each class, without a source: ask your shop, and type your own."
                + (own ? " An asterisk marks a price that you typed." : "")
                + unpriced
                + " There: what the small pumps of today feed already. Spare: for what breaks or gets lost.";
    }
}
