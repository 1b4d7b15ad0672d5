package lungfish.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.cost.CostAnswer;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.sizing.Candidate;
import lungfish.sizing.PumpedAir;

/** The verdict, and the reasons that the figures give for it and against it. */
final class Judging {
    /** Levels closer than this sound alike: a just noticeable difference is about 1 dB. */
    private static final double HEARD_DB = 1;

    /** A difference below this share of today's figure is not worth a word: common practice, no source. */
    private static final double WORTH_A_WORD = 0.05;

    private final Plan plan;
    private final PumpedAir air;
    private final Optional<Way> today;
    private final Optional<Way> planned;
    private final List<Reason> reasons = new ArrayList<>();

    Judging(Plan plan, PumpedAir air, Optional<Way> today, Optional<Way> planned) {
        this.plan = plan;
        this.air = air;
        this.today = today;
        this.planned = planned;
    }

    Verdict verdict() {
        if (today.isEmpty()) {
            return Verdict.NO_PUMPS;
        }
        if (plan.keepPumps()) {
            return Verdict.NOT_YET;
        }
        Optional<Candidate> blower = plan.duty().map(Duty::candidate);
        if (blower.isEmpty()) {
            return Verdict.NO_BLOWER;
        }
        return blower.get().serves() ? judged() : Verdict.MEND_FIRST;
    }

    private Verdict judged() {
        boolean pays =
                plan.cost().filter(cost -> cost.paybackYear().isPresent()).isPresent();
        if (pays) {
            return Verdict.PAYS;
        }
        return air.isSaid() || air.shortOutlets() > 0 ? Verdict.NEEDED : Verdict.UNSAID;
    }

    List<Reason> reasons() {
        today.ifPresent(pumps -> planned.ifPresent(blower -> compare(pumps, blower)));
        return reasons;
    }

    private void compare(Way pumps, Way blower) {
        air(pumps);
        level(pumps, blower);
        add(Reason.Kind.FEWER_PLUGS, Reason.Kind.MORE_PLUGS, pumps.machines(), blower.machines());
        events(pumps, blower);
        add(Reason.Kind.LESS_POWER, Reason.Kind.MORE_POWER, pumps.watts(), blower.watts());
        money(pumps, blower);
        failures(pumps, blower);
    }

    private void air(Way pumps) {
        if (pumps.air().missingM3PerS() > 0) {
            reasons.add(new Reason(
                    Reason.Kind.AIR_SHORT,
                    pumps.air().missingM3PerS(),
                    pumps.air().shortOutlets()));
        }
        if (pumps.air().unfed() > 0) {
            reasons.add(new Reason(Reason.Kind.UNFED, pumps.air().unfed(), air.outlets()));
        }
        if (air.isOutgrown() && air.isSaid()) {
            reasons.add(new Reason(Reason.Kind.GROWTH, air.plannedM3PerS(), air.spareM3PerS()));
        }
    }

    private void level(Way pumps, Way blower) {
        if (pumps.dba().isPresent() && blower.dba().isPresent()) {
            double was = pumps.dba().getAsDouble();
            double less = was - blower.dba().getAsDouble();
            if (Math.abs(less) >= HEARD_DB) {
                reasons.add(new Reason(less > 0 ? Reason.Kind.QUIETER : Reason.Kind.LOUDER, Math.abs(less), was));
            }
        }
    }

    private void events(Way pumps, Way blower) {
        int years = plan.cost().map(CostAnswer::years).orElse(1);
        pumps.bill().ifPresent(kept -> blower.bill()
                .ifPresent(bought -> add(
                        Reason.Kind.FEWER_EVENTS,
                        Reason.Kind.MORE_EVENTS,
                        kept.events().perYear(years),
                        bought.events().perYear(years))));
    }

    private void money(Way pumps, Way blower) {
        int years = plan.cost().map(CostAnswer::years).orElse(1);
        pumps.bill().ifPresent(kept -> blower.bill().ifPresent(bought -> {
            double less = (kept.total() - bought.total()) / years;
            if (less != 0) {
                reasons.add(new Reason(less > 0 ? Reason.Kind.CHEAPER : Reason.Kind.DEARER, Math.abs(less), years));
            }
        }));
    }

    /** Only where one failure takes more outlets than today, and no standby is there. */
    private void failures(Way pumps, Way blower) {
        pumps.failure().ifPresent(now -> blower.failure()
                .filter(then -> then.leftShare() < 1 && !then.standby() && then.outlets() > now.outlets())
                .ifPresent(then -> reasons.add(new Reason(Reason.Kind.ONE_FAILURE, then.outlets(), now.outlets()))));
    }

    private void add(Reason.Kind less, Reason.Kind more, double today, double then) {
        double by = today - then;
        if (Math.abs(by) > WORTH_A_WORD * today) {
            reasons.add(new Reason(by > 0 ? less : more, Math.abs(by), today));
        }
    }
}
