package lungfish.report;

import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Severity;
import lungfish.today.Beside;

/** A plan as text for people: one sentence, the panels, the outlets, what to mend, the cautions last. */
public final class PlanText {
    private final Plan plan;
    private final Quantities quantities;
    private final Names names;
    private final Sentences sentences;

    public PlanText(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.quantities = quantities;
        this.names = new Names(plan.room());
        this.sentences = new Sentences(quantities, names);
    }

    /** The text. */
    public String text() {
        return page().text();
    }

    /** The text, and how every headline figure comes about. */
    public String withWhys() {
        Page page = page();
        WhySheet sheet = new WhySheet(quantities, sentences);
        plan.whys().forEach(why -> sheet.write(why, page));
        return page.text();
    }

    private Page page() {
        Page page = new Page().heading(plan.room().name()).paragraph(headline());
        new Panels(plan, quantities, names, page).write();
        new BesidePage(plan, Beside.of(plan), quantities).write(page);
        new OutletTable(plan, quantities).write(page);
        FindingsText findings = new FindingsText(sentences, page);
        findings.some(plan.findings(), Severity.BLOCKING, Severity.WARNING, Severity.NOTE);
        findings.assumptions(plan.assumptions());
        findings.some(plan.findings(), Severity.CAUTION);
        return page;
    }

    private String headline() {
        if (plan.keepPumps()) {
            return "No central blower yet: the small pumps you have give this room its air, and it would not pay.";
        }
        return plan.duty()
                .map(this::headline)
                .orElse("This room cannot be planned yet; see what must be mended first.");
    }

    private static String outlets(int count) {
        return Sentences.counted(count, "outlet") + (count == 1 ? " needs " : " need ");
    }

    private String headline(Duty duty) {
        String needs = outlets(plan.outlets().size())
                + quantities.show(duty.needed().freeM3PerS(), Dimension.AIR_FLOW) + " at "
                + quantities.show(duty.needed().pressurePa(), Dimension.PRESSURE);
        String blower = duty.candidate().fleet().name();
        if (plan.isBlocked()) {
            return needs + "; as it stands the plan does not work: see what must be mended first.";
        }
        int more = plan.headroom().map(room -> room.outlets()).orElse(0);
        return needs + ": " + blower + " will do" + (more > 0 ? ", with room for " + more + " more." : ".");
    }
}
