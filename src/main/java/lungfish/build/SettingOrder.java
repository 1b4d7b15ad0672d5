package lungfish.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.room.OutletId;
import lungfish.sizing.Setting;

/**
 * The order in which outlets are set, as balancing of ducts does it: all at their coarse start, then first the index outlet,
 * which stays open and shows whether the pressure does; then the others from the far end of the air's way back to the blower.
 * A valve that is turned moves what is behind it on the air's way alike, so that what was set there keeps its share; set from
 * the blower on, each valve would undo the one before. With a bleed that holds the pressure one round is mostly enough.
 */
public final class SettingOrder {
    /**
     * One outlet in its turn.
     *
     * @param turn from 1
     * @param index whether it is the worst-served one
     * @param opening coarse start of its valve, 0 to 1; absent where the plan has no blower
     * @param targetM3PerS free air that it should get
     * @param jarS seconds in which that fills the keeper's jar
     * @param wayM how far the air goes to it
     */
    public record Turn(
            int turn,
            Need need,
            boolean index,
            OptionalDouble opening,
            double targetM3PerS,
            double jarS,
            double wayM) {}

    private SettingOrder() {}

    /** The order for a plan; empty where it has nothing to set. */
    public static List<Turn> of(Plan plan) {
        return plan.piped()
                .map(piped -> of(plan, new Hung(plan.room(), piped), piped.needs()))
                .orElse(List.of());
    }

    static List<Turn> of(Plan plan, Hung hung, List<Need> needs) {
        Map<OutletId, Double> way = new HashMap<>();
        for (int i = 0; i < needs.size(); i++) {
            way.put(needs.get(i).id(), hung.wayM(i));
        }
        List<OutletPlan> order = new ArrayList<>(plan.outlets());
        order.sort(Comparator.comparing((OutletPlan outlet) -> !outlet.index())
                .thenComparing(outlet -> -way.getOrDefault(outlet.need().id(), 0.0)));
        List<Turn> turns = new ArrayList<>();
        for (OutletPlan outlet : order) {
            turns.add(turn(
                    turns.size() + 1, outlet, way.getOrDefault(outlet.need().id(), 0.0)));
        }
        return List.copyOf(turns);
    }

    private static Turn turn(int number, OutletPlan outlet, double wayM) {
        return new Turn(
                number,
                outlet.need(),
                outlet.index(),
                outlet.setting().map(Setting::opening).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                outlet.need().targetM3PerS().si(),
                outlet.jarS(),
                wayM);
    }
}
