package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.room.Outlet;
import lungfish.room.Tank;

/** Whether an outlet makes sense: air asked once; least, target and most in that order; a valve no more than open. */
final class OutletSound {
    private static final double LONGEST_AIRLINE_M = 1000;
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private OutletSound() {}

    /** What is wrong with an outlet in its tank. */
    static Optional<Refused> trouble(Tank tank, Outlet outlet) {
        List<Refused> troubles = new ArrayList<>();
        look(tank, outlet, troubles);
        return troubles.stream().findFirst();
    }

    static void look(Tank tank, Outlet outlet, List<Refused> troubles) {
        release(tank, outlet, troubles);
        flow(outlet, troubles);
        double opening = outlet.valve().map(Outlet.Valve::opening).orElse(NONE).orElse(0);
        double lengthM =
                outlet.airline().map(Outlet.Airline::lengthM).orElse(NONE).orElse(0);
        if (!(opening >= 0 && opening <= 1)) {
            troubles.add(Refused.because("A valve is between shut and open.", "Type a share from 0 % to 100 %."));
        }
        if (!(lengthM >= 0 && lengthM <= LONGEST_AIRLINE_M)) {
            troubles.add(Refused.because(
                    "The airline of outlet " + outlet.id() + " would be {found} long.",
                    "Type its length, or leave it empty to have it measured.",
                    Refused.length("found", lengthM)));
        }
    }

    private static void flow(Outlet outlet, List<Refused> troubles) {
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

    private static void release(Tank tank, Outlet outlet, List<Refused> troubles) {
        OptionalDouble depth = outlet.depthM();
        if (depth.isPresent() && !(depth.getAsDouble() >= 0 && depth.getAsDouble() <= tank.waterDepthM())) {
            troubles.add(Refused.because(
                    "Outlet " + outlet.id() + " would let its air out {found} below the water line, where the water of "
                            + Words.tank(tank) + " is {most} deep.",
                    "Raise the outlet, or fill the tank higher.",
                    Refused.length("found", depth.getAsDouble()),
                    Refused.length("most", tank.waterDepthM())));
        }
    }
}
