package lungfish.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.network.AsSet;
import lungfish.oxygen.Levels;
import lungfish.plan.Plan;
import lungfish.reason.Assumption;

/**
 * Plays outages through. The air is that of the blower as planned; of the small pumps of today where the plan could not be
 * solved, or says that they should stay.
 */
public final class Drills {
    private final Plan plan;
    private final Catalogue catalogue;
    private final Plant plant;
    private final boolean plannedBlower;

    private Drills(Plan plan, Catalogue catalogue, Plant plant, boolean plannedBlower) {
        this.plan = plan;
        this.catalogue = catalogue;
        this.plant = plant;
        this.plannedBlower = plannedBlower;
    }

    /** The drills of a plan, every valve as it should be set; empty where nothing gives air. */
    public static Optional<Drills> of(Plan plan, Catalogue catalogue) {
        return plan.trials()
                .map(trials -> of(plan, catalogue, trials.shouldBe()))
                .orElseGet(() -> pumps(plan, catalogue));
    }

    /**
     * The drills of a plan.
     *
     * @param trial of that plan: as its valves should be set, or as they are
     */
    public static Optional<Drills> of(Plan plan, Catalogue catalogue, AsSet trial) {
        Optional<Drills> central =
                Central.of(plan, trial, catalogue).map(plant -> new Drills(plan, catalogue, plant, true));
        return plan.keepPumps() ? pumps(plan, catalogue).or(() -> central) : central.or(() -> pumps(plan, catalogue));
    }

    private static Optional<Drills> pumps(Plan plan, Catalogue catalogue) {
        SmallPumps pumps = new SmallPumps(plan.demand().needs(), plan.pumps());
        return plan.pumps().isEmpty() || plan.demand().needs().isEmpty()
                ? Optional.empty()
                : Optional.of(new Drills(plan, catalogue, pumps, false));
    }

    /** Plays one through. */
    public Drill play(Scene scene) {
        Arising arising = new Arising(plan.room(), catalogue, plant, scene);
        Moments moments = arising.moments();
        Stirring stirring = new Stirring(plan.room().stirrers());
        OwnPumps pumps = OwnPumps.of(plant, plan.room(), catalogue);
        List<Stretch> stretches = new Timeline(scene, pumps, moments, arising.means(), stirring).stretches();
        Levels levels = Levels.of(plan.room(), catalogue);
        return new Drill(
                scene,
                moments.backS() < scene.untilS() ? OptionalDouble.of(moments.backS()) : OptionalDouble.empty(),
                plannedBlower,
                levels,
                plant.needs(),
                stretches,
                new Tanks(plan.room(), catalogue, plant, stirring, levels).through(stretches),
                assumptions(arising));
    }

    private List<Assumption> assumptions(Arising arising) {
        List<Assumption> all = new ArrayList<>(Levels.assumed(plan.room(), catalogue));
        all.addAll(arising.assumptions());
        return all;
    }

    /** All that can fail in this room, the mains first. */
    public List<Failing> possible() {
        return Possible.of(plan, plant, plannedBlower);
    }
}
