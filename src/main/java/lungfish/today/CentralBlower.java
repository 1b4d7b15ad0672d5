package lungfish.today;

import java.util.Comparator;
import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.cost.CostAnswer;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;

/** The central blower as a way to give the room its air. */
final class CentralBlower {
    private CentralBlower() {}

    /** Empty without a pipe or outlets, and where the network cannot be solved. */
    static Optional<Way> of(Plan plan) {
        return plan.duty().map(duty -> way(plan, duty));
    }

    private static Way way(Plan plan, Duty duty) {
        Candidate candidate = duty.candidate();
        return new Way(
                candidate.fleet().machines(),
                SmallPumps.circuits(plan.room().blowers(Blower.Role.PLANNED)),
                candidate.tired().watts(),
                plan.planned().dba(),
                plan.cost().map(CostAnswer::central),
                air(plan, duty),
                Optional.of(failure(plan, duty)));
    }

    private static Way.Air air(Plan plan, Duty duty) {
        double asked = duty.needed().freeM3PerS();
        double gives = duty.candidate().fleet().freeAt(duty.needed().pressurePa(), Wear.TIRED);
        double missing = Math.max(0, asked - gives);
        return new Way.Air(asked, gives, missing, missing > 0 ? plan.outlets().size() : 0, 0);
    }

    /** Every outlet hangs on the one pipe; of several machines, that one fails which leaves least. */
    private static Failure failure(Plan plan, Duty duty) {
        Fleet fleet = duty.candidate().fleet();
        Optional<Fleet.Fewer> worst =
                fleet.withOneFewer().stream().min(Comparator.comparingDouble(fewer -> leftShare(fewer.left(), duty)));
        int tanks = (int) plan.demand().needs().stream()
                .map(need -> need.seat().tank().id())
                .distinct()
                .count();
        boolean standby = !plan.room().blowers(Blower.Role.STANDBY).isEmpty();
        String name = worst.map(fewer -> fewer.gone().name()).orElseGet(fleet::name);
        double left = worst.map(fewer -> leftShare(fewer.left(), duty)).orElse(0.0);
        return new Failure(name, plan.outlets().size(), tanks, Math.min(1, left), standby);
    }

    private static double leftShare(Fleet left, Duty duty) {
        return left.freeAt(duty.needed().pressurePa(), Wear.TIRED)
                / duty.needed().freeM3PerS();
    }
}
