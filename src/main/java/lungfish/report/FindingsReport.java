package lungfish.report;

import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** What a plan finds, all of it. */
public final class FindingsReport {
    private final Plan plan;
    private final Names names;
    private final Sentences sentences;

    public FindingsReport(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.names = new Names(plan.room());
        this.sentences = new Sentences(quantities, names);
    }

    /** As in the plan's JSON. */
    public String json() {
        ReasonsJson reasons = new ReasonsJson(names, sentences);
        return JsonWriter.text(out -> {
            reasons.problems(out, plan.findings());
            reasons.findings(out, plan.findings());
            reasons.assumptions(out, plan.assumptions());
        });
    }

    /** A list for people. */
    public String text() {
        Page page = new Page().heading(plan.room().name() + " reads well.");
        FindingsText findings = new FindingsText(sentences, page);
        findings.all(plan.findings());
        findings.assumptions(plan.assumptions());
        return page.text();
    }
}
