package lungfish.report;

import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.cost.CostAnswer;
import lungfish.headroom.Headroom;
import lungfish.noise.NoiseAnswer;
import lungfish.plan.Bled;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Code;
import lungfish.sizing.Candidate;
import lungfish.sizing.Running;

/** Duty, headroom, noise, backup, cost and siphon: of each one figure, and the reason under it. */
final class Panels {
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
        page.hung("Siphon    ", new SiphonWords(quantities, names).inShort(plan));
    }

    private void duty(Duty duty) {
        Candidate candidate = duty.candidate();
        page.hung(
                "Duty      ",
                flow(duty.needed().freeM3PerS()) + " at "
                        + pressure(duty.needed().pressurePa()));
        BesideWords.notYet(plan).ifPresent(this::under);
        if (candidate.reserveShare() < 0) {
            under(chosen(duty) + candidate.fleet().name() + ": too small. Tired, it gives "
                    + flow((1 + candidate.reserveShare()) * duty.needed().freeM3PerS()) + " at that pressure.");
        } else {
            running(duty);
        }
        under("Worst served is " + names.of(duty.needed().index().id().part()) + ". " + pipe(duty));
    }

    private void running(Duty duty) {
        Candidate candidate = duty.candidate();
        Running tired = candidate.tired();
        under(chosen(duty) + candidate.fleet().name() + ", running at "
                + pressure(tired.gaugePa()) + " and giving " + flow(tired.freeM3PerS()) + bled(tired) + "; drawing "
                + show(tired.watts(), Dimension.POWER) + "; good for "
                + pressure(candidate.fleet().continuousPa())
                + " all day.");
        under("That is tired, with devices due for cleaning. New, it is "
                + flow(candidate.fresh().freeM3PerS()) + " at "
                + pressure(candidate.fresh().gaugePa()) + ". The air leaves at "
                + temperature(tired.discharge().coolK()) + " to "
                + temperature(tired.discharge().hotK()) + ".");
    }

    private String chosen(Duty duty) {
        if (!duty.recommended()) {
            return "As drawn: ";
        }
        return plan.keepPumps() ? "Were one bought: " : "Recommended: ";
    }

    /** With what the bled air costs: power in proportion to the air. */
    private String bled(Running running) {
        return Bled.of(plan)
                .map(bled -> ", of which " + flow(running.bledM3PerS()) + " are bled ("
                        + show(bled.share(), Dimension.SHARE) + ", some " + money(bled.perYear()) + " of power a year)")
                .orElse(", none of it bled");
    }

    private String pipe(Duty duty) {
        String loss = pressure(duty.needed().pipePa());
        return duty.pipeMatters()
                ? "The pipe between takes " + loss + "."
                : "The pipe does not matter: it takes " + loss + " on the way there.";
    }

    private void headroom(Headroom headroom) {
        String more = headroom.outlets() == 1 ? "1 more outlet" : headroom.outlets() + " more outlets";
        page.hung("Headroom  ", headroom.outlets() == 0 ? "No room for another outlet" : more);
        String limit = headroom.limit()
                .map(broken -> (alreadyBroken(headroom) ? "Broken already: " : "First to break: ")
                        + broken.limit().words() + ". ")
                .orElse("No limit was met. ");
        under("Tired, and with devices due, " + left(headroom.freeM3PerS()) + " (new and clean: "
                + fresh(headroom) + "). " + limit
                + "Counted in outlets like " + names.of(headroom.like().id().part())
                + ", hung where the worst-served one hangs.");
        int planned = plan.demand().planned().size();
        if (planned > 0) {
            under("Planned racks would add " + planned + " outlets.");
        }
    }

    /** With air left but no room for one more, a limit other than air is broken as things stand. */
    private static boolean alreadyBroken(Headroom headroom) {
        return headroom.outlets() == 0
                && headroom.freeM3PerS() > headroom.like().targetM3PerS().si();
    }

    private String left(double freeM3PerS) {
        return flow(Math.abs(freeM3PerS)) + (freeM3PerS < 0 ? " are lacking" : " are left");
    }

    private String fresh(Headroom headroom) {
        double fresh = headroom.freshFreeM3PerS();
        return fresh < 0 || headroom.freeM3PerS() < 0 ? left(fresh) : flow(fresh);
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

    /** A runtime is no promise where the inverter cannot carry the blower, or is not there. */
    private String inverterWord() {
        return plan.findings().stream().anyMatch(finding -> finding.code() == Code.INVERTER_TOO_SMALL)
                ? ", with a larger inverter"
                : plan.findings().stream().anyMatch(finding -> finding.code() == Code.INVERTER_MISSING)
                        ? ", with an inverter"
                        : "";
    }

    private String machinesOn() {
        return plan.essential()
                .filter(duty -> duty.machinesOn() < duty.machines())
                .map(duty -> ", " + duty.machinesOn() + " of " + duty.machines() + " machines on")
                .orElse("");
    }

    private void backup() {
        OptionalDouble runtime = plan.backup().map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty());
        String headline = runtime.isPresent() ? time(runtime.getAsDouble()) + " on battery" : "No battery";
        page.hung("Backup    ", headline + inverterWord());
        SafeWords safe = new SafeWords(plan, quantities);
        String verdict =
                safe.verdict().map(words -> Sentences.capital(words) + ". ").orElse("");
        under(verdict + Sentences.capital(safe.first()) + ".");
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
                .map(bill -> "; the small pumps " + money(bill.total()) + payback(cost))
                .orElse("");
        under("Over " + cost.years() + " years " + money(cost.central().total()) + " in all" + today + ".");
    }

    /** A blower that does not serve the room is not compared with the pumps. */
    private String payback(CostAnswer cost) {
        boolean serves =
                plan.duty().map(Duty::candidate).filter(Candidate::serves).isPresent();
        if (!serves) {
            return "";
        }
        return cost.paybackYear().isPresent()
                ? ": the central blower pays from year " + cost.paybackYear().getAsInt() + " on"
                : ": the central blower does not pay" + shortPumps();
    }

    private String shortPumps() {
        return plan.findings().stream().anyMatch(finding -> finding.code() == Code.SMALL_PUMPS_SHORT)
                ? ", but the pumps give less air than is asked"
                : "";
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
