package lungfish.report;

import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.cost.CostAnswer;
import lungfish.headroom.Headroom;
import lungfish.noise.NoiseAnswer;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Candidate;
import lungfish.sizing.Running;

/** Duty, headroom, noise, backup and cost: of each one figure, and the reason under it. */
final class Panels {
    /** Below this share of the needed pressure nobody feels the pipe. */
    private static final double PIPE_MATTERS_FROM = 0.02;

    private final Plan plan;
    private final Quantities quantities;
    private final Names names;
    private final Page page;

    Panels(Plan plan, Quantities quantities, Names names, Page page) {
        this.plan = plan;
        this.quantities = quantities;
        this.names = names;
        this.page = page;
    }

    void write() {
        page.paragraph("");
        plan.duty().ifPresentOrElse(this::duty, () -> page.hung("Duty      ", "Not known: nothing can be solved yet."));
        plan.headroom().ifPresent(this::headroom);
        noise();
        backup();
        plan.cost().ifPresent(this::cost);
    }

    private void duty(Duty duty) {
        Candidate candidate = duty.candidate();
        Running tired = candidate.tired();
        page.hung(
                "Duty      ",
                flow(duty.needed().freeM3PerS()) + " at "
                        + pressure(duty.needed().pressurePa()));
        under(chosen(duty) + FleetName.of(candidate.fleet()) + ", running at "
                + pressure(tired.gaugePa()) + " and giving " + flow(tired.freeM3PerS()) + bled(tired) + "; drawing "
                + show(tired.watts(), Dimension.POWER) + "; good for "
                + pressure(candidate.fleet().continuousPa())
                + " all day.");
        under("That is tired, with devices due for cleaning. New, it is "
                + flow(candidate.fresh().freeM3PerS()) + " at "
                + pressure(candidate.fresh().gaugePa()) + ". The air leaves at "
                + temperature(candidate.fresh().discharge().coolK()) + " to "
                + temperature(candidate.fresh().discharge().hotK()) + ".");
        under("Worst served is " + names.of(duty.needed().index().id().part()) + ". " + pipe(duty));
    }

    private String chosen(Duty duty) {
        if (!duty.recommended()) {
            return "As drawn: ";
        }
        return plan.keepPumps() ? "Were one bought: " : "Recommended: ";
    }

    private String bled(Running running) {
        return running.bledM3PerS() > 0
                ? ", of which " + flow(running.bledM3PerS()) + " are bled"
                : ", none of it bled";
    }

    private String pipe(Duty duty) {
        String loss = pressure(duty.needed().pipePa());
        boolean matters =
                duty.needed().pipePa() >= PIPE_MATTERS_FROM * duty.needed().pressurePa();
        return matters
                ? "The pipe between takes " + loss + "."
                : "The pipe does not matter: it takes " + loss + " on the way there.";
    }

    private void headroom(Headroom headroom) {
        String more = headroom.outlets() == 1 ? "1 more outlet" : headroom.outlets() + " more outlets";
        page.hung("Headroom  ", headroom.outlets() == 0 ? "No room for another outlet" : more);
        String limit = headroom.limit()
                .map(broken -> "First to break: " + Limits.name(broken.limit()) + ". ")
                .orElse("No limit was met. ");
        under(left(headroom) + " (new and clean: " + flow(headroom.freshFreeM3PerS()) + "). " + limit
                + "Counted in outlets like " + names.of(headroom.like().id().part())
                + ", hung where the worst-served one hangs.");
        int planned = plan.demand().planned().size();
        if (planned > 0) {
            under("Planned racks would add " + planned + " outlets.");
        }
    }

    private String left(Headroom headroom) {
        return headroom.freeM3PerS() < 0
                ? "Tired, and with devices due, " + flow(-headroom.freeM3PerS()) + " are lacking"
                : "Tired, and with devices due, " + flow(headroom.freeM3PerS()) + " are left";
    }

    private void noise() {
        NoiseAnswer planned = plan.planned();
        page.hung("Noise     ", planned.dba().isPresent() ? level(planned.dba()) + " at " + planned.at() : "Not known");
        if (plan.today().dba().isPresent()) {
            under("Today: " + level(plan.today().dba()) + ", from "
                    + plan.today().heard().size() + " places.");
        }
        under("The machines only: bubbles, the hiss of a bleed and humming walls are not counted.");
    }

    private String machinesOn() {
        return plan.essential()
                .filter(duty -> duty.machinesOn() < duty.machines())
                .map(duty -> ", " + duty.machinesOn() + " of " + duty.machines() + " machines on")
                .orElse("");
    }

    private void backup() {
        OptionalDouble runtime = plan.backup().map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty());
        page.hung("Backup    ", runtime.isPresent() ? time(runtime.getAsDouble()) + " on battery" : "No battery");
        plan.backup().ifPresent(backup -> {
            if (backup.essentialRuntimeS().isPresent()) {
                under("With the essential outlets only" + machinesOn() + ": "
                        + time(backup.essentialRuntimeS().getAsDouble()) + ".");
            }
            under("For " + time(backup.wishedS().si()) + " it takes "
                    + show(backup.needed().chargeC(), Dimension.CHARGE) + " at "
                    + show(backup.needed().voltageV(), Dimension.VOLTAGE) + " ("
                    + backup.needed().kind().name() + ").");
        });
    }

    private void cost(CostAnswer cost) {
        page.hung("Cost      ", money(cost.central().energyPerYear()) + " a year for power");
        String today = cost.today()
                .map(bill -> "; the small pumps " + money(bill.total()) + ": " + payback(cost))
                .orElse("");
        under("Over " + cost.years() + " years " + money(cost.central().total()) + " in all" + today + ".");
    }

    private static String payback(CostAnswer cost) {
        return cost.paybackYear().isPresent()
                ? "the central blower pays from year " + cost.paybackYear().getAsInt() + " on"
                : "the central blower does not pay";
    }

    private void under(String reason) {
        page.hung("          ", reason);
    }

    private String flow(double m3PerS) {
        return show(m3PerS, Dimension.AIR_FLOW);
    }

    private String pressure(double pa) {
        return show(pa, Dimension.PRESSURE);
    }

    private String temperature(double k) {
        return show(k, Dimension.TEMPERATURE);
    }

    private String level(OptionalDouble dba) {
        return show(dba.orElse(0), Dimension.SOUND_LEVEL);
    }

    private String time(double s) {
        return show(s, Dimension.DURATION);
    }

    private String money(double amount) {
        return show(amount, Dimension.MONEY);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
