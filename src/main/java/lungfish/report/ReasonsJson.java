package lungfish.report;

import java.util.List;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.reason.Amount;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Origin;
import lungfish.reason.PartId;
import lungfish.reason.Severity;
import lungfish.reason.Why;

/** Findings, assumptions and whys as JSON: the values, and the sentences that a reader would see. */
final class ReasonsJson {
    private final Names names;
    private final Sentences sentences;

    ReasonsJson(Names names, Sentences sentences) {
        this.names = names;
        this.sentences = sentences;
    }

    /** In the words of a plan's own room. */
    static ReasonsJson of(Plan plan, Quantities quantities) {
        Names names = new Names(plan.room());
        return new ReasonsJson(names, new Sentences(quantities, names));
    }

    /** What fails a plan, as every failure is told; nothing where it works. */
    void problems(JsonWriter out, List<Finding> findings) {
        List<Finding> blocking = findings.stream()
                .filter(finding -> finding.severity() == Severity.BLOCKING)
                .toList();
        out.maybeObjects("problems", blocking, (one, finding) -> one.text("path", "")
                .text("found", sentences.says(finding))
                .text("expected", sentences.mend(finding)));
    }

    void findings(JsonWriter out, List<Finding> findings) {
        out.objects("findings", findings, this::finding);
    }

    private void finding(JsonWriter out, Finding finding) {
        out.word("code", finding.code()).word("severity", finding.severity());
        where(out, finding.where());
        out.text("says", sentences.says(finding)).text("mend", sentences.mend(finding));
        amounts(out, finding.amounts());
        out.flatObjects("words", finding.words(), (one, word) -> one.text("name", word.name())
                .text("text", word.text()));
    }

    private void where(JsonWriter out, PartId part) {
        out.flatObject(
                "where",
                one -> one.word("kind", part.kind()).text("id", part.id()).text("name", names.of(part)));
    }

    private static void amounts(JsonWriter out, List<Amount> amounts) {
        out.flatObjects("amounts", amounts, (one, amount) -> {
            one.text("name", amount.name());
            Keys.number(one, "si", amount.si());
            one.word("dimension", amount.dimension());
        });
    }

    void assumptions(JsonWriter out, List<Assumption> assumptions) {
        out.objects("assumptions", assumptions, (one, assumption) -> {
            where(one, assumption.where());
            one.text("what", assumption.what());
            Keys.number(one, "si", assumption.si());
            one.word("dimension", assumption.dimension()).text("because", assumption.because());
        });
    }

    void whys(JsonWriter out, List<Why> whys) {
        out.objects("whys", whys, this::why);
    }

    private void why(JsonWriter out, Why why) {
        out.text("figure", why.figure());
        Keys.number(out, "total_si", why.totalSi());
        out.word("dimension", why.dimension()).word("adding", why.adding());
        out.objects("terms", why.terms(), this::term);
        out.objects("inputs", why.inputs(), ReasonsJson::input);
        out.text("equation", why.equation()).text("source", why.source());
    }

    private void term(JsonWriter out, Why.Term term) {
        out.text("says", sentences.says(term));
        Keys.number(out, "si", term.si());
        origin(out, term.origin());
    }

    private static void input(JsonWriter out, Why.Input input) {
        out.text("name", input.name());
        Keys.number(out, "si", input.si());
        out.word("dimension", input.dimension());
        origin(out, input.origin());
    }

    private static void origin(JsonWriter out, Origin origin) {
        out.word("origin", origin.kind()).text("detail", origin.detail());
    }
}
