package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import lungfish.drawing.BandsPicture;
import lungfish.drawing.OddsPicture;
import lungfish.drawing.Palette;
import lungfish.drawing.Pictures.Painting;
import lungfish.drawing.Type;
import lungfish.drawing.WeightsPicture;
import lungfish.quantity.Dimension;
import lungfish.report.GrowthWords;
import lungfish.report.Sentences;
import lungfish.report.SureWords;
import lungfish.sure.Odds;
import lungfish.sure.Sureness;
import lungfish.sure.Weight;

/** Puts an answer on the sheet: a headline, the bands, the odds of stages and of other blowers, and what to measure first. */
final class SureAnswer {
    /** Other blowers that are listed. */
    private static final int OTHERS = 8;

    private final View view;
    private final Stack into;
    private final IntSupplier widthPx;
    private final boolean isCurrent;
    private final SureWords words;

    SureAnswer(View view, Stack into, IntSupplier widthPx, boolean isCurrent) {
        this.view = view;
        this.into = into;
        this.widthPx = widthPx;
        this.isCurrent = isCurrent;
        this.words = new SureWords(view.quantities());
    }

    void waiting() {
        paragraph(Type::body, Palette::softInk, "Rooms like this one are being looked at …");
    }

    void unsolved() {
        paragraph(Type::headline, Palette::ink, "Not known yet").setName("sure");
        paragraph(
                Type::body,
                Palette::softInk,
                "The room cannot be solved yet: see what must be mended first. How far things may be off can be said already.");
    }

    void tell(Sureness sure, boolean keepsPumps) {
        Odds now = sure.stages().get(0).served();
        paragraph(
                        Type::headline,
                        Palette::ink,
                        Sentences.capital(SureWords.odds(now)) + " rooms like this are well served")
                .setName("sure");
        paragraph(Type::body, Palette::softInk, because(sure, keepsPumps));
        SureWords.alike(sure.chosen().fleet()).ifPresent(said -> paragraph(Type::body, Palette::softInk, said));
        bands(sure.bands());
        words.shift(sure)
                .ifPresent(said -> paragraph(Type::body, Palette::ink, said).setName("shift"));
        stages(sure.stages());
        weights(sure.weights());
    }

    private static String because(Sureness sure, boolean keepsPumps) {
        String blower = sure.chosen().fleet().name();
        return (keepsPumps ? "By this blower, were it bought" : "By this blower")
                + ", tired, with devices due for cleaning: " + blower + ".";
    }

    private void bands(Sureness.Bands bands) {
        title("Where its figures lie");
        List<BandsPicture.Row> rows =
                SureWords.figures(bands).stream().map(this::row).toList();
        String says = rows.stream().map(BandsPicture.Row::says).collect(Collectors.joining(". "));
        picture(
                says,
                BandsPicture.height(rows.size(), view.look()),
                (area, look, g) -> BandsPicture.paint(rows, area, look, g));
    }

    private BandsPicture.Row row(SureWords.Figure figure) {
        return new BandsPicture.Row(
                figure.name(),
                figure.band(),
                words.band(figure.band(), figure.dimension()),
                words.show(figure.band().plannedSi(), figure.dimension()),
                words.show(figure.band().medianSi(), figure.dimension()));
    }

    private void stages(List<Sureness.StageOdds> stages) {
        title(stages.size() > 1 ? "Whether each stage is served" : "Whether it is served");
        odds(stages.stream()
                .map(stage -> new OddsPicture.Row(
                        GrowthWords.when(stage.when()) + ": " + Sentences.counted(stage.outlets(), "outlet"),
                        SureWords.odds(stage.served()),
                        "surely " + SureWords.between(stage.served()),
                        SureWords.outOf(stage.served(), OddsPicture.DOTS),
                        !stage.when().isNow()))
                .toList());
    }

    private void odds(List<OddsPicture.Row> rows) {
        String says = rows.stream().map(OddsPicture.Row::says).collect(Collectors.joining(". "));
        picture(
                says,
                OddsPicture.height(rows.size(), view.look()),
                (area, look, g) -> OddsPicture.paint(rows, area, look, g));
    }

    private void weights(List<Weight> weights) {
        if (weights.isEmpty()) {
            paragraph(
                    Type::body,
                    Palette::ink,
                    "Nothing that may be off moves the reserve, so there is nothing to measure.");
            return;
        }
        title("What the doubt about the reserve comes from");
        String first = SureWords.advice(weights.get(0).spread());
        paragraph(Type::body, Palette::ink, "This first: " + first).setName("measure-first");
        List<WeightsPicture.Row> rows = weights.stream()
                .filter(SureWords::isWorthALine)
                .map(weight -> new WeightsPicture.Row(
                        SureWords.name(weight.spread()), weight.share(), words.show(weight.share(), Dimension.SHARE)))
                .toList();
        picture(
                rows.stream().map(WeightsPicture.Row::says).collect(Collectors.joining(". ")),
                WeightsPicture.height(rows.size(), view.look()),
                (area, look, g) -> WeightsPicture.paint(rows, area, look, g));
    }

    /** The odds of every blower that has a chance. */
    void others(Sureness sure) {
        List<OddsPicture.Row> rows = sure.candidates().stream()
                .filter(SureWords::isFair)
                .limit(OTHERS)
                .map(each -> new OddsPicture.Row(
                        each.planned().kind().name(),
                        SureWords.odds(each.served()),
                        SureWords.odds(each.fits()) + " with every wish",
                        SureWords.outOf(each.served(), OddsPicture.DOTS),
                        false))
                .toList();
        if (!rows.isEmpty()) {
            title("Blowers, in the order of the plan: whether each serves");
            odds(rows);
        }
    }

    private void title(String text) {
        Paragraph title = new Paragraph(view, Type::label, Palette::softInk, widthPx);
        title.setText(text);
        into.add(title, "growx, gaptop " + view.px(6));
    }

    private Paragraph paragraph(Function<Type, Font> type, Function<Palette, Color> ink, String text) {
        Paragraph paragraph = new Paragraph(view, type, isCurrent ? ink : Palette::softInk, widthPx);
        paragraph.setText(text);
        into.add(paragraph, "growx");
        return paragraph;
    }

    private void picture(String says, double heightPx, Painting painting) {
        into.add(new Painted(view, says, widthPx, () -> heightPx, painting, () -> isCurrent), "growx");
    }
}
