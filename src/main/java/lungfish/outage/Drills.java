package lungfish.outage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.backup.Habits;
import lungfish.backup.Load;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.oxygen.Levels;
import lungfish.plan.Plan;
import lungfish.reason.Assumption;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/**
 * Plays outages through. The air is that of the blower as planned; of the small pumps of today where the plan could not be
 * solved, or says that they should stay.
 */
public final class Drills {
    private final Plan plan;
    private final Room room;
    private final Catalogue catalogue;
    private final Plant plant;
    private final Tanks tanks;
    private final boolean plannedBlower;
    private final Map<List<Blower>, Plant> plants;

    private Drills(
            Plan plan,
            Room room,
            Catalogue catalogue,
            Plant plant,
            Tanks tanks,
            boolean plannedBlower,
            Map<List<Blower>, Plant> plants) {
        this.plan = plan;
        this.room = room;
        this.catalogue = catalogue;
        this.plant = plant;
        this.tanks = tanks;
        this.plannedBlower = plannedBlower;
        this.plants = plants;
    }

    private static Drills on(Plant plant, Plan plan, Catalogue catalogue, boolean plannedBlower) {
        Room room = plan.room();
        Map<List<Blower>, Plant> plants = new HashMap<>();
        plants.put(room.blowers(Blower.Role.STANDBY), plant);
        return new Drills(plan, room, catalogue, plant, tanks(room, catalogue, plant), plannedBlower, plants);
    }

    private static Tanks tanks(Room room, Catalogue catalogue, Plant plant) {
        return new Tanks(room, catalogue, plant, new Stirring(room.stirrers()), Levels.of(room, catalogue));
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
        Optional<Drills> central = Central.of(plan, trial, catalogue).map(plant -> on(plant, plan, catalogue, true));
        return plan.keepPumps() ? pumps(plan, catalogue).or(() -> central) : central.or(() -> pumps(plan, catalogue));
    }

    private static Optional<Drills> pumps(Plan plan, Catalogue catalogue) {
        return plan.pumps().isEmpty() || plan.demand().needs().isEmpty()
                ? Optional.empty()
                : Optional.of(on(SmallPumps.of(plan, catalogue), plan, catalogue, false));
    }

    /**
     * The drills of the same plan in a room that differs in nothing but its backup, its standbys and its stirrers: what is
     * solved stays solved.
     */
    public Drills with(Room other) {
        Plant fed = plants.computeIfAbsent(other.blowers(Blower.Role.STANDBY), standbys -> plant.standingBy(other));
        Tanks same = other.stirrers().equals(room.stirrers()) ? tanks : tanks(other, catalogue, fed);
        return new Drills(plan, other, catalogue, fed, same, plannedBlower, plants);
    }

    /** Plays one through. */
    public Drill play(Scene scene) {
        Arising arising = new Arising(room, catalogue, plant, scene);
        Moments moments = arising.moments();
        List<Stretch> stretches = stretches(scene, arising, moments);
        return new Drill(
                scene,
                moments.backS() < scene.untilS() ? OptionalDouble.of(moments.backS()) : OptionalDouble.empty(),
                plannedBlower,
                Levels.of(room, catalogue),
                plant.needs(),
                stretches,
                tanks.through(stretches),
                assumptions(arising));
    }

    private List<Assumption> assumptions(Arising arising) {
        List<Assumption> all = new ArrayList<>(Levels.assumed(room, catalogue));
        all.addAll(arising.assumptions());
        return all;
    }

    /** Plays one through as far as is asked for. */
    public Watch watch(Scene scene) {
        Arising arising = new Arising(room, catalogue, plant, scene);
        return new Watch(tanks, stretches(scene, arising, arising.moments()));
    }

    private List<Stretch> stretches(Scene scene, Arising arising, Moments moments) {
        OwnPumps pumps = OwnPumps.of(plant, room, catalogue);
        return new Timeline(scene, pumps, moments, arising.means(), new Stirring(room.stirrers())).stretches();
    }

    /** All that can fail in this room, the mains first. */
    public List<Failing> possible() {
        return Possible.of(plan, plant, plannedBlower);
    }

    /** The tanks in place, in the order drawn. */
    public List<Vessel> vessels() {
        return tanks.vessels();
    }

    /** The outlets that the air goes to. */
    public List<Need> needs() {
        return plant.needs();
    }

    /** The blowers, or the small pumps of today. */
    public Set<BlowerId> blowers() {
        return plant.blowers();
    }

    /** What they draw. */
    public Load load() {
        return new Load(plant.watts(), plant.startingWatts(), plant.essentialWatts());
    }

    /** Whether the air is that of the blower as planned, not of the pumps of today. */
    public boolean isPlannedBlower() {
        return plannedBlower;
    }

    /** How soon people do what they do. */
    public Habits habits() {
        return new Habits(room, catalogue);
    }

    public Levels levels() {
        return Levels.of(room, catalogue);
    }
}
