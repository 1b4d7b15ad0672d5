package lungfish.roomfile;

import lungfish.json.NumberText;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Outlet;

/** The air asked for an outlet is asked once, and least, target and most stand in that order. */
final class FlowChecks {
    private static final double NO_FLOOR = Double.NEGATIVE_INFINITY;
    private static final double NO_CEILING = Double.POSITIVE_INFINITY;

    private final Problems problems;

    FlowChecks(Problems problems) {
        this.problems = problems;
    }

    void tell(Spots spots) {
        spots.outlets().forEach(outlet -> flow(outlet.place(), outlet.value().flow()));
    }

    private void flow(Place place, Outlet.Flow flow) {
        if (flow.targetM3PerS().isPresent() && flow.turnoverPerS().isPresent()) {
            problems.add(
                    place.key("turnover_per_s"),
                    "a target is given too",
                    "either target_m3_per_s or turnover_per_s, not both");
        }
        double least = flow.leastM3PerS().orElse(NO_FLOOR);
        double target = flow.targetM3PerS().orElse(least);
        double most = flow.mostM3PerS().orElse(NO_CEILING);
        ordered(place.key("least_m3_per_s"), least, "the target", target);
        ordered(place.key("most_m3_per_s"), "the target", target, most);
    }

    private void ordered(Place place, double least, String above, double target) {
        if (least > target) {
            problems.add(place, found(least, "more", above, target), "at most " + NumberText.of(target));
        }
    }

    private void ordered(Place place, String below, double target, double most) {
        if (target > most) {
            problems.add(place, found(most, "less", below, target), "at least " + NumberText.of(target));
        }
    }

    private static String found(double value, String how, String other, double limit) {
        return NumberText.of(value) + " is " + how + " than " + other + " (" + NumberText.of(limit) + ")";
    }
}
