package lungfish.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.network.DropFlow;
import lungfish.sizing.Setting;

/**
 * One outlet in the plan.
 *
 * @param setting how its valve should be set; absent without a pipe and a blower
 * @param predictedM3PerS free air when every valve stands at its coarse start
 * @param asSet with the valves as filed
 * @param asSetSparePa what its tap then has beyond what its target takes with its own valve open; negative: short of it
 * @param jarS seconds in which its target fills the keeper's jar
 * @param todayM3PerS what its small pump of today gives it
 * @param index whether it is the worst-served one when every valve is set as it should be
 * @param asSetIndex whether it has the least spare with the valves as filed
 */
public record OutletPlan(
        Need need,
        Optional<Setting> setting,
        OptionalDouble predictedM3PerS,
        Optional<DropFlow> asSet,
        OptionalDouble asSetSparePa,
        double jarS,
        OptionalDouble todayM3PerS,
        boolean index,
        boolean asSetIndex) {}
