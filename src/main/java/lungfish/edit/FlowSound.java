package lungfish.edit;

import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.room.Outlet;

/** Whether the air asked for an outlet makes sense: asked once; least, target and most in that order. */
final class FlowSound {
    private FlowSound() {}

    static void look(Outlet outlet, List<Refused> troubles) {
        Outlet.Flow flow = outlet.flow();
        boolean sizes = Sizes.isFlow(flow.leastM3PerS(), true)
                && Sizes.isFlow(flow.targetM3PerS(), false)
                && Sizes.isFlow(flow.mostM3PerS(), false)
                && Sizes.isFlow(flow.turnoverPerS(), false);
        if (!sizes) {
            troubles.add(Refused.because(
                    "Outlet " + outlet.id() + " cannot be asked for that air.",
                    "A target is more than nothing; leave it empty to take what is typical of the device."));
        }
        if (flow.targetM3PerS().isPresent() && flow.turnoverPerS().isPresent()) {
            troubles.add(Refused.because(
                    "Outlet " + outlet.id() + " would have both a target and a turnover.", "Give one of the two."));
        }
        double least = flow.leastM3PerS().orElse(0);
        double target = flow.targetM3PerS().orElse(least);
        double most = flow.mostM3PerS().orElse(Double.POSITIVE_INFINITY);
        if (least > target) {
            troubles.add(outOfOrder(outlet, "least, {one}, would be more than its target, {other}.", least, target));
        }
        if (target > most) {
            troubles.add(outOfOrder(outlet, "target, {one}, would be more than its most, {other}.", target, most));
        }
    }

    private static Refused outOfOrder(Outlet outlet, String what, double one, double other) {
        return Refused.because(
                "Outlet " + outlet.id() + ": its " + what,
                "Change one of the two.",
                new Amount("one", one, Dimension.AIR_FLOW),
                new Amount("other", other, Dimension.AIR_FLOW));
    }
}
