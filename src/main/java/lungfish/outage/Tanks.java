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

    private final Plant plant;
    private final Stirring stirring;
    private final Levels levels;
    private final Balances balances;
    private final List<Double> well;
    private final Set<StirrerId> allStirring;
    private final List<Place> places = new ArrayList<>();

    /** A tank, the outlets in it, and what is known of it by the cautious figure. */
    private record Place(Vessel vessel, List<Integer> outlets, Optional<Standing> cautious) {
        Tank tank() {
            return vessel.tank();
        }
    }

    /** A tank as it stands with its air on. */
    private record Standing(Balance balance, Breath usual) {
        /** Taken before the meal: with it, it would tell of tanks that live today that they cannot. */
        double startGPerM3() {
            return balance.atRest().steadyGPerM3(usual);
        }

        /** Whether it keeps above a level for ever, breathing so: it goes towards the steady level, and never past it. */
        boolean staysAbove(double gPerM3, Phase phase) {
            return (phase.fed() ? balance : balance.atRest()).steadyGPerM3(phase.breath()) > gPerM3;
        }
    }

    Tanks(Room room, Catalogue catalogue, Plant plant, Stirring stirring, Levels levels) {
        this.plant = plant;
        this.stirring = stirring;
        this.levels = levels;
        this.balances = new Balances(room, catalogue);
        this.well = plant.airM3PerS(State.WELL);
        this.allStirring = stirring.running(false, Optional.empty());
        Map<TankId, List<Integer>> outlets = new HashMap<>();
        for (int i = 0; i < plant.needs().size(); i++) {
            TankId tank = plant.needs().get(i).seat().tank().id();
            outlets.computeIfAbsent(tank, each -> new ArrayList<>()).add(i);
        }
        for (Rack rack : room.racks()) {
            if (!rack.isPlanned()) {
                rack.shelves().forEach(shelf -> shelf.tanks()
                        .forEach(tank ->
                                places.add(place(rack, shelf, tank, outlets.getOrDefault(tank.id(), List.of())))));
            }
        }
    }

    private Place place(Rack rack, Shelf shelf, Tank tank, List<Integer> own) {
        Optional<Standing> cautious = standing(tank, own, Case.CAUTIOUS);
        boolean essential = own.stream().anyMatch(i -> plant.needs().get(i).essential());
        boolean judged = cautious.isPresent() || tank.survivalS().isPresent();
        OptionalDouble start =
                cautious.stream().mapToDouble(Standing::startGPerM3).findFirst();
        return new Place(new Vessel(rack, shelf, tank, essential, judged, start), own, cautious);
    }

    private Optional<Standing> standing(Tank tank, List<Integer> own, Case how) {
        return balances.of(tank, how).map(balance -> new Standing(balance, breath(tank, own, well, allStirring, how)));
    }

    List<Vessel> vessels() {
        return places.stream().map(Place::vessel).toList();
    }

    List<TankDrill> through(List<Stretch> stretches) {
        return places.stream().map(place -> drill(place, stretches)).toList();
    }

    private TankDrill drill(Place place, List<Stretch> stretches) {
        Vessel vessel = place.vessel();
        Optional<TankDrill.Courses> courses = place.cautious()
                .flatMap(cautious -> standing(place.tank(), place.outlets(), Case.LIKELY)
                        .map(likely -> new TankDrill.Courses(
                                course(place, stretches, Case.LIKELY, likely),
                                course(place, stretches, Case.CAUTIOUS, cautious))));
        OptionalDouble typed = typed(place.tank(), place.outlets(), stretches);
        return new TankDrill(vessel.rack(), vessel.shelf(), vessel.tank(), vessel.essential(), levels, courses, typed);
    }

    /** When a tank is in danger, by the cautious figure; followed only where it does not stay above all the time. */
    OptionalDouble dangerS(int vessel, List<Stretch> stretches) {
        Place place = places.get(vessel);
        if (place.tank().survivalS().isPresent()) {
            return typed(place.tank(), place.outlets(), stretches);
        }
        return place.cautious()
                .map(standing -> dangerS(place, stretches, standing))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble dangerS(Place place, List<Stretch> stretches, Standing standing) {
        double dangerGPerM3 = levels.dangerGPerM3();
        boolean staysAbove = standing.startGPerM3() > dangerGPerM3
                && phases(place, stretches, Case.CAUTIOUS, standing).stream()
                        .allMatch(phase -> standing.staysAbove(dangerGPerM3, phase));
        return staysAbove
                ? OptionalDouble.empty()
                : course(place, stretches, Case.CAUTIOUS, standing).downToS(dangerGPerM3);
    }

    /** The outage begins where the tank stands with its air on: never at saturation. */
    private Course course(Place place, List<Stretch> stretches, Case how, Standing standing) {
        return Courses.of(
                standing.balance(),
                standing.startGPerM3(),
                phases(place, stretches, how, standing),
                stretches.get(stretches.size() - 1).toS());
    }

    /** The meal counts while the tank breathes less than usual. */
    private List<Phase> phases(Place place, List<Stretch> stretches, Case how, Standing standing) {
        List<Phase> phases = new ArrayList<>();
        for (Stretch stretch : stretches) {
            Breath breath = breath(place.tank(), place.outlets(), stretch.airM3PerS(), stretch.stirring(), how);
            phases.add(new Phase(stretch.fromS(), breath, isLess(breath, standing.usual())));
        }
        return phases;
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

    /** Whether any of its outlets gets any air. */
    boolean breathes(int vessel, Stretch stretch) {
        return places.get(vessel).outlets().stream()
                .anyMatch(i -> stretch.airM3PerS().get(i) > 0);
    }
}
