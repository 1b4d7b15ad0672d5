package lungfish.rescue;

import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.plan.Plan;
import lungfish.sizing.PumpDuty;
import lungfish.standing.Redundancy;
import lungfish.standing.StandingAnswer;

/** The ways to give a planned room its air, and how each stands up to failures. */
public final class Ways {
    private Ways() {}

    /** The ways of a plan: blowers draw what they draw where they run, tired; the pumps of today what they draw now. */
    public static StandingAnswer of(Plan plan, Catalogue catalogue) {
        OptionalDouble blowerW = plan.duty().stream()
                .mapToDouble(duty -> duty.candidate().tired().watts())
                .findFirst();
        double pumpsW = plan.pumps().stream().mapToDouble(PumpDuty::watts).sum();
        return Redundancy.of(
                plan.room(), catalogue, blowerW, pumpsW > 0 ? OptionalDouble.of(pumpsW) : OptionalDouble.empty());
    }
}
