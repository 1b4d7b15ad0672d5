package lungfish.standing;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** How this package computes the published rows about availability. */
public final class AvailabilityChecks {
    private static final double HOUR_S = 3600;

    private AvailabilityChecks() {}

    /** Single machines, k of n, reliability over a time. */
    public static CheckGroup availability() {
        return CheckGroup.of(
                        "Availability",
                        "A = MTBF/(MTBF + MTTR); k of n; e^(−λt). That sums of rare events are never below the exact steady"
                                + " state is held against Markov chains in `MachinesTest`.",
                        "availability.json")
                .by("k-of-n", in -> Availability.kOutOfN(whole(in, "k"), whole(in, "n"), in.number("unit_reliability")))
                .by("machine", in -> Availability.of(in.number("mtbf_h"), in.number("mttr_h")))
                .by(
                        "machines",
                        in -> Availability.kOutOfN(
                                whole(in, "k"),
                                whole(in, "n"),
                                Availability.of(in.number("mtbf_h"), in.number("mttr_h"))))
                .by("reliability", in -> Availability.reliability(in.number("rate"), in.number("t")))
                .by("hours-a-year", AvailabilityChecks::hours);
    }

    private static double hours(Inputs in) {
        Rates rates = new Rates(in.number("mtbf_h") * HOUR_S, 0, 0, in.number("mttr_h") * HOUR_S, 0, 0, 0, HOUR_S);
        return Machines.one(rates).airlessShare() * Availability.YEAR_S / HOUR_S;
    }

    private static int whole(Inputs in, String name) {
        return (int) in.number(name);
    }
}
