package lungfish.outage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.network.Conditions;
import lungfish.oxygen.Balance;
import lungfish.oxygen.Balances;
import lungfish.oxygen.Breath;
import lungfish.oxygen.Case;
import lungfish.oxygen.Course;
import lungfish.oxygen.Courses;
import lungfish.oxygen.Levels;
import lungfish.oxygen.Phase;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.StirrerId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Follows every tank of a room through the stretches of an outage. */
final class Tanks {
    private static final double SERVED_BAND = Conditions.usual().servedBand();

    private final Room room;
    private final Plant plant;
    private final Stirring stirring;
    private final Levels levels;
    private final Balances balances;
    private final List<Double> well;
    private final Set<StirrerId> allStirring;
    private final Map<TankId, List<Integer>> outlets = new HashMap<>();

    Tanks(Room room, Catalogue catalogue, Plant plant, Stirring stirring, Levels levels) {
        this.room = room;
        this.plant = plant;
        this.stirring = stirring;
        this.levels = levels;
        this.balances = new Balances(room, catalogue);
        this.well = plant.airM3PerS(State.WELL);
        this.allStirring = stirring.running(false, Optional.empty());
        for (int i = 0; i < plant.needs().size(); i++) {
            TankId tank = plant.needs().get(i).seat().tank().id();
            outlets.computeIfAbsent(tank, each -> new ArrayList<>()).add(i);
        }
    }

    List<TankDrill> through(List<Stretch> stretches) {
        List<TankDrill> drills = new ArrayList<>();
        for (Rack rack : room.racks()) {
            if (!rack.isPlanned()) {
                rack.shelves().forEach(shelf -> shelf.tanks()
                        .forEach(tank -> drills.add(drill(rack, shelf, tank, stretches))));
            }
        }
        return drills;
    }

    private TankDrill drill(Rack rack, Shelf shelf, Tank tank, List<Stretch> stretches) {
        List<Integer> own = outlets.getOrDefault(tank.id(), List.of());
        Optional<TankDrill.Courses> courses = course(tank, own, stretches, Case.LIKELY)
                .flatMap(likely -> course(tank, own, stretches, Case.CAUTIOUS)
                        .map(cautious -> new TankDrill.Courses(likely, cautious)));
        boolean essential = own.stream().anyMatch(i -> plant.needs().get(i).essential());
        return new TankDrill(rack, shelf, tank, essential, levels, courses, typed(tank, own, stretches));
    }

    private Optional<Course> course(Tank tank, List<Integer> own, List<Stretch> stretches, Case how) {
        return balances.of(tank, how).map(balance -> course(tank, own, stretches, how, balance));
    }

    /**
     * The outage begins where the tank stands with its air on: never at saturation. The meal counts while the tank has less than
     * that: taken before as well, it would tell of tanks that live today that they cannot.
     */
    private Course course(Tank tank, List<Integer> own, List<Stretch> stretches, Case how, Balance balance) {
        Breath usual = breath(tank, own, well, allStirring, how);
        double start = balance.atRest().steadyGPerM3(usual);
        List<Phase> phases = new ArrayList<>();
        for (Stretch stretch : stretches) {
            Breath breath = breath(tank, own, stretch.airM3PerS(), stretch.stirring(), how);
            phases.add(new Phase(stretch.fromS(), breath, isLess(breath, usual)));
        }
        return Courses.of(
                balance, start, phases, stretches.get(stretches.size() - 1).toS());
    }

    /** Whether a tank breathes less than usual, by more than the band in which an outlet counts as served. */
    private static boolean isLess(Breath breath, Breath usual) {
        boolean stills = usual.stirred() && !breath.stirred();
        return stills || breath.bubblesM3PerS() < (1 - SERVED_BAND) * usual.bubblesM3PerS();
    }

    private Breath breath(Tank tank, List<Integer> own, List<Double> air, Set<StirrerId> running, Case how) {
        List<Need> needs = own.stream().map(plant.needs()::get).toList();
        List<Double> flows = own.stream().map(air::get).toList();
        return balances.breath(needs, flows, how, stirring.moves(tank, running));
    }

    /** Whether an outlet gets at least what it does its work with, or as much as ever. */
    private boolean works(int outlet, double airM3PerS) {
        double usual = (1 - SERVED_BAND) * well.get(outlet);
        return airM3PerS > 0
                && airM3PerS >= Math.min(usual, plant.needs().get(outlet).leastM3PerS());
    }

    /** The time that the room says for a vessel runs while none of its outlets gets what it works with. */
    private OptionalDouble typed(Tank tank, List<Integer> own, List<Stretch> stretches) {
        double livesS = tank.survivalS().orElse(Double.POSITIVE_INFINITY);
        double since = Double.NaN;
        for (Stretch stretch : stretches) {
            boolean breathes =
                    own.stream().anyMatch(i -> works(i, stretch.airM3PerS().get(i)));
            since = breathes ? Double.NaN : Double.isNaN(since) ? stretch.fromS() : since;
            if (since + livesS <= stretch.toS()) {
                return OptionalDouble.of(since + livesS);
            }
        }
        return OptionalDouble.empty();
    }
}
