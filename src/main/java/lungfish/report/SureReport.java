package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sure.Odds;
import lungfish.sure.Sureness;
import lungfish.sure.Weight;

/** How sure a plan is, as a page of text. */
public final class SureReport {
    private static final String OF_NO_PURCHASE = ", were one bought: the plan keeps the small pumps.";
    private static final int MOST_LISTED = 10;

    /** Where there is no plan. */
    public static final String UNSOLVED =
            "The room cannot be solved, so nobody knows how sure that is: 'check' says what is missing.\n";

    private final String room;
    private final Quantities quantities;
    private final SureWords words;
    private final Page page = new Page();
    private boolean besidePumps;

    public SureReport(String room, Quantities quantities) {
        this.room = room;
        this.quantities = quantities;
        this.words = new SureWords(quantities);
    }

    /** Of a plan that keeps the small pumps: it says so. */
    public SureReport besidePumps() {
        besidePumps = true;
        return this;
    }

    /** A page for people. */
    public String text(Sureness sure) {
        Odds now = sure.stages().get(0).served();
        page.heading(Sentences.capital(SureWords.odds(now)) + " rooms like " + room + " are well served.");
        page.paragraph("By: " + sure.chosen().fleet().name() + (besidePumps ? OF_NO_PURCHASE : "."));
        page.paragraph(quantities.show(sure.samples(), Dimension.COUNT)
                + " rooms, with all that may be off drawn anew in each; the blower tired, devices due for cleaning.");
        SureWords.alike(sure.chosen().fleet()).ifPresent(page::paragraph);
        bands(sure.bands());
        words.shift(sure).ifPresent(page::paragraph);
        stages(sure.stages());
        blowers(sure.candidates());
        weights(sure.weights());
        return page.text();
    }

    private void bands(Sureness.Bands bands) {
        Table table = new Table(
                words("Figure"), numbers("The plan says"), numbers("Eight of ten lie from"), numbers("Half lie above"));
        SureWords.figures(bands).forEach(figure -> row(table, figure));
        page.paragraph("").table(table);
    }

    private void row(Table table, SureWords.Figure figure) {
        table.row(
                figure.name(),
                words.show(figure.band().plannedSi(), figure.dimension()),
                words.band(figure.band(), figure.dimension()),
                words.show(figure.band().medianSi(), figure.dimension()));
    }

    private void stages(List<Sureness.StageOdds> stages) {
        Table table = new Table(words("Stage"), numbers("Outlets"), numbers("Served"), numbers("Of 100, between"));
        stages.forEach(stage -> table.row(
                GrowthWords.when(stage.when()),
                quantities.show(stage.outlets(), Dimension.COUNT),
                SureWords.odds(stage.served()),
                SureWords.between(stage.served())));
        page.paragraph("").table(table);
    }

    private void blowers(List<Sureness.CandidateOdds> candidates) {
        List<Sureness.CandidateOdds> fair =
                candidates.stream().filter(SureWords::isFair).toList();
        Table table = new Table(words("Blower"), numbers("Serves"), numbers("With every wish"));
        fair.stream()
                .limit(MOST_LISTED)
                .forEach(each -> table.row(
                        each.planned().kind().name(), SureWords.odds(each.served()), SureWords.odds(each.fits())));
        page.paragraph("").table(table);
        int more = candidates.size() - Math.min(MOST_LISTED, fair.size());
        if (more > 0) {
            page.paragraph("Not listed: " + more + " more for these mains, worse or too small.");
        }
    }

    private void weights(List<Weight> weights) {
        if (weights.isEmpty()) {
            page.paragraph("").paragraph("Nothing that may be off moves the reserve, so there is nothing to measure.");
            return;
        }
        Table table =
                new Table(words("Doubt comes from"), numbers("Give or take"), numbers("Share"), words("To be surer"));
        weights.stream()
                .filter(SureWords::isWorthALine)
                .forEach(weight -> table.row(
                        SureWords.name(weight.spread()),
                        quantities.show(weight.width(), SureWords.dimension(weight.spread())),
                        quantities.show(weight.share(), Dimension.SHARE),
                        SureWords.advice(weight.spread())));
        page.paragraph("").table(table);
    }
}
