package lungfish.plan;

import java.util.List;
import java.util.Optional;
import lungfish.cost.CostAnswer;
import lungfish.quantity.Dimension;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.sizing.Running;

/**
 * What is bled, and what that costs: power in proportion to the air. It is no waste to be saved at once: a blower that is
 * throttled instead stands higher on its curve, runs hotter, and a displacement machine then draws more.
 *
 * @param freeM3PerS let out
 * @param share of all the air that the blower gives
 * @param watts of it
 * @param perYear money for those
 */
public record Bled(double freeM3PerS, double share, double watts, double perYear) {
    /** A bleed below this share of the blower's air is what rounding leaves of none. */
    private static final double NO_BLEED_SHARE = 1e-6;

    /** Of a plan; empty where nothing is bled. */
    public static Optional<Bled> of(Plan plan) {
        return plan.duty().flatMap(duty -> plan.cost().flatMap(cost -> of(duty, cost)));
    }

    static Optional<Bled> of(Duty duty, CostAnswer cost) {
        Running running = duty.candidate().tired();
        double share = running.freeM3PerS() > 0 ? running.bledM3PerS() / running.freeM3PerS() : 0;
        return share > NO_BLEED_SHARE
                ? Optional.of(new Bled(
                        running.bledM3PerS(),
                        share,
                        share * running.watts(),
                        share * cost.central().energyPerYear()))
                : Optional.empty();
    }

    Why why(CostAnswer cost) {
        double all = cost.central().energyPerYear();
        return new Why(
                "power for the air that is bled, a year",
                perYear,
                Dimension.MONEY,
                Why.Adding.SUM,
                List.of(
                        new Why.Term("power of the blower, a year", all, Origin.computed("")),
                        new Why.Term("of it for the outlets' air", perYear - all, Origin.computed(""))),
                List.of(
                        new Why.Input(
                                "bled", freeM3PerS, Dimension.AIR_FLOW, Origin.computed("curve, demand and bleed")),
                        new Why.Input("share of the blower's air", share, Dimension.SHARE, Origin.computed("")),
                        new Why.Input("power of that share", watts, Dimension.POWER, Origin.computed(""))),
                "P · q_bled / q · t · price",
                "arithmetic, in proportion to the air; throttling it instead would not save as much");
    }
}
