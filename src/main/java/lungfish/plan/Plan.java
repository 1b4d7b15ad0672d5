package lungfish.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lungfish.backup.BackupAnswer;
import lungfish.cost.CostAnswer;
import lungfish.demand.Demand;
import lungfish.headroom.Headroom;
import lungfish.network.Network;
import lungfish.noise.NoiseAnswer;
import lungfish.piping.PipedRoom;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Severity;
import lungfish.reason.Why;
import lungfish.room.Room;
import lungfish.siphon.Siphons;
import lungfish.sizing.Candidate;
import lungfish.sizing.PumpDuty;

/**
 * Everything live about one room. Immutable.
 *
 * @param piped the room as a network; absent without a pipe or outlets
 * @param network with the blower in its places, tired, valves as filed: what any other program can check
 * @param trials how the air goes, as the valves should be set and as they are; absent where there is nothing to solve
 * @param duty absent where there is nothing to solve
 * @param candidates all classes, those that fit first
 * @param outlets those in place, in the order drawn
 * @param pumps the small pumps of today
 * @param today noise of the pumps of today
 * @param planned noise of the blower
 * @param essential where the blowers run with only the essential outlets on; absent where none is marked
 * @param airless how long the tanks last when all air stops and nothing helps
 * @param backup absent where nothing is known that draws power
 * @param cost absent where no blower can be named
 * @param keepPumps whether the honest answer is to keep the small pumps
 * @param paysFrom where the pumps should stay: with how many outlets the same blower would pay; absent where nobody knows
 * @param alarmPa where a low-pressure alarm should be set
 * @param siphons where water could go when the air stops: through the pipe, or through the small pumps where they stay
 * @param findings the gravest first
 * @param whys one for each headline figure
 */
public record Plan(
        Room room,
        Demand demand,
        Optional<PipedRoom> piped,
        Optional<Network> network,
        Optional<Trials> trials,
        Optional<Duty> duty,
        List<Candidate> candidates,
        List<OutletPlan> outlets,
        List<PumpDuty> pumps,
        Optional<Headroom> headroom,
        NoiseAnswer today,
        NoiseAnswer planned,
        Optional<EssentialDuty> essential,
        Airless airless,
        Optional<BackupAnswer> backup,
        Optional<CostAnswer> cost,
        boolean keepPumps,
        OptionalInt paysFrom,
        OptionalDouble alarmPa,
        Optional<Solution> solution,
        Siphons siphons,
        List<Finding> findings,
        List<Assumption> assumptions,
        List<Why> whys) {
    public Plan {
        candidates = List.copyOf(candidates);
        outlets = List.copyOf(outlets);
        pumps = List.copyOf(pumps);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
        whys = List.copyOf(whys);
    }

    /** Whether something must be mended before the plan works. */
    public boolean isBlocked() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.BLOCKING);
    }
}
