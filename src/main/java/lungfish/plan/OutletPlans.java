package lungfish.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.JarFill;
import lungfish.air.Water;
import lungfish.demand.Need;
import lungfish.network.Drop;
import lungfish.network.DropFlow;
import lungfish.network.Drops;
import lungfish.reason.Assumable;
import lungfish.room.OutletId;
import lungfish.sizing.PumpDuty;

/** Tells every outlet's part of the plan. */
final class OutletPlans {
    private final Setup setup;
    private final Map<OutletId, Double> today = new HashMap<>();
    private final double jarM3;

    OutletPlans(Setup setup, List<PumpDuty> pumps) {
        this.setup = setup;
        pumps.forEach(pump -> pump.givesEach().forEach(today::putIfAbsent));
        this.jarM3 = setup.room()
                .wishes()
                .jarM3()
                .orElse(setup.catalogue().assumed(Assumable.JAR).si());
    }

    List<OutletPlan> of(Optional<AirSide> air) {
        List<OutletPlan> plans = new ArrayList<>();
        List<Need> needs = setup.demand().needs();
        List<Double> spares = air.map(OutletPlans::asSetSpares).orElse(List.of());
        int least = spares.isEmpty() ? -1 : spares.indexOf(Collections.min(spares));
        for (int i = 0; i < needs.size(); i++) {
            int at = i;
            plans.add(air.map(side -> solved(side, at, spares.get(at), at == least))
                    .orElseGet(() -> unsolved(needs.get(at))));
        }
        return plans;
    }

    /** What each tap has beyond what the target of its drop takes with its valve open, Pa; in the order of the drops. */
    private static List<Double> asSetSpares(AirSide air) {
        List<Drop> drops = air.piped().network().drops();
        List<Double> spares = new ArrayList<>();
        for (int i = 0; i < drops.size(); i++) {
            double target = drops.get(i).targetM3PerS().orElse(0);
            double takes = Drops.neededPa(air.filedNetwork().conditions(), drops.get(i), target);
            spares.add(air.filed().drop(i).tapGaugePa() - takes);
        }
        return spares;
    }

    private OutletPlan solved(AirSide air, int i, double asSetSparePa, boolean asSetIndex) {
        Need need = air.piped().needs().get(i);
        DropFlow filed = air.filed().drop(i);
        return new OutletPlan(
                need,
                Optional.of(air.settings().get(i)),
                OptionalDouble.of(air.predicted().drop(i).freeM3PerS()),
                Optional.of(filed),
                OptionalDouble.of(asSetSparePa),
                jarS(need),
                today(need),
                air.duty().needed().tuned().indexDrop() == i,
                asSetIndex);
    }

    private OutletPlan unsolved(Need need) {
        return new OutletPlan(
                need,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                jarS(need),
                today(need),
                false,
                false);
    }

    /** The jar is held with its mouth at the surface, where the bubbles come up. */
    private double jarS(Need need) {
        Water water = setup.surroundings().water(need.seat().tank());
        double target = need.targetM3PerS().si();
        return target > 0
                ? JarFill.seconds(jarM3, 0, water, setup.surroundings().freeAir(), target)
                : Double.POSITIVE_INFINITY;
    }

    private OptionalDouble today(Need need) {
        Double gets = today.get(need.id());
        return gets == null ? OptionalDouble.empty() : OptionalDouble.of(gets);
    }
}
