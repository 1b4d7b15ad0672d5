package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Where a tank that is slid along a shelf comes to rest.
 *
 * @param xM its left side, from the left end of the shelf
 * @param why what drew it there; empty where nothing is near
 */
public record ShelfSnap(double xM, Optional<Stop> why) {
    /** A gap that is none, or hardly one, is no rule for others. */
    private static final double LEAST_GAP_M = 0.005;

    /**
     * Draws a tank to the ends of the rack and to its neighbours, to gaps as wide as those that are there, to the middle
     * between two neighbours, and to the tanks of other shelves, where they are near enough; else to the grid.
     *
     * @param moving those that move along, so that it is not drawn to itself
     * @param lengthM of the tank
     * @param xM where its left side would be
     * @param gridM empty: none
     */
    public static ShelfSnap at(
            Rack rack,
            Shelf shelf,
            Collection<TankId> moving,
            double lengthM,
            double xM,
            double toleranceM,
            OptionalDouble gridM) {
        List<Tank> others =
                Gaps.fromLeft(shelf.withTanks(Each.kept(shelf.tanks(), tank -> !moving.contains(tank.id()))));
        List<Stop> stops = new ArrayList<>();
        touching(stops, rack, others, lengthM);
        spaced(stops, rack, others, lengthM);
        inColumns(stops, rack, shelf, lengthM);
        Optional<Stop> why = Stop.nearest(stops, xM, toleranceM);
        return new ShelfSnap(Stop.rest(why, xM, gridM), why);
    }

    private static void touching(List<Stop> stops, Rack rack, List<Tank> others, double lengthM) {
        stops.add(Stop.at(0, "rack's end"));
        stops.add(new Stop(rack.widthM() - lengthM, rack.widthM(), "rack's end"));
        for (Tank other : others) {
            stops.add(Stop.at(other.endXM(), Words.tank(other)));
            stops.add(new Stop(other.xM() - lengthM, other.xM(), Words.tank(other)));
        }
    }

    /** As far from a neighbour as its neighbours are from each other, and in the middle between two. */
    private static void spaced(List<Stop> stops, Rack rack, List<Tank> others, double lengthM) {
        for (double gapM : gapsM(others)) {
            for (Tank other : others) {
                stops.add(new Stop(other.endXM() + gapM, other.endXM() + gapM, "same gap"));
                stops.add(new Stop(other.xM() - gapM - lengthM, other.xM() - gapM, "same gap"));
            }
        }
        for (int i = 0; i <= others.size(); i++) {
            double fromM = i == 0 ? 0 : others.get(i - 1).endXM();
            double toM = i == others.size() ? rack.widthM() : others.get(i).xM();
            if (toM - fromM >= lengthM) {
                stops.add(new Stop((fromM + toM - lengthM) / 2, (fromM + toM) / 2, "middle of the gap"));
            }
        }
    }

    private static List<Double> gapsM(List<Tank> others) {
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            double gapM = others.get(i).xM() - (i == 0 ? 0 : others.get(i - 1).endXM());
            if (gapM > LEAST_GAP_M && !gaps.contains(Metres.clean(gapM))) {
                gaps.add(Metres.clean(gapM));
            }
        }
        return gaps;
    }

    private static void inColumns(List<Stop> stops, Rack rack, Shelf shelf, double lengthM) {
        rack.shelves().stream()
                .filter(other -> !other.id().equals(shelf.id()))
                .flatMap(other -> other.tanks().stream())
                .forEach(tank -> {
                    stops.add(Stop.at(tank.xM(), "in line with " + Words.tank(tank)));
                    stops.add(new Stop(tank.endXM() - lengthM, tank.endXM(), "in line with " + Words.tank(tank)));
                });
    }
}
