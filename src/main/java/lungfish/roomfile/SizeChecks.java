package lungfish.roomfile;

import java.util.Comparator;
import java.util.List;
import lungfish.json.NumberText;
import lungfish.json.Problems;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** What stands in something fits into it: tanks on shelves, water in tanks, air releases in water. */
final class SizeChecks {
    /** Sizes are typed to the millimetre: less than this is rounding. */
    private static final double ROUNDING_M = 0.001;

    private final Problems problems;

    SizeChecks(Problems problems) {
        this.problems = problems;
    }

    void tell(Spots spots) {
        for (Spot<Rack> rack : spots.racks()) {
            List<Spot<Shelf>> shelves = rack.inside("shelves", Rack::shelves);
            rising(shelves);
            for (Spot<Shelf> shelf : shelves) {
                List<Spot<Tank>> tanks = shelf.inside("tanks", Shelf::tanks);
                tanks.forEach(tank -> onShelf(tank, rack.value()));
                apart(tanks);
            }
        }
        spots.tanks().forEach(this::water);
    }

    private void rising(List<Spot<Shelf>> shelves) {
        for (int i = 1; i < shelves.size(); i++) {
            double below = shelves.get(i - 1).value().heightM();
            double height = shelves.get(i).value().heightM();
            if (height <= below) {
                problems.add(
                        shelves.get(i).place().key("height_m"),
                        text(height) + " is no higher than the shelf before it (" + text(below) + ")",
                        "shelves from the bottom up");
            }
        }
    }

    private void onShelf(Spot<Tank> spot, Rack rack) {
        Tank tank = spot.value();
        double end = tank.xM() + tank.outside().lengthM();
        if (end > rack.widthM() + ROUNDING_M) {
            problems.add(
                    spot.place().key("x_m"),
                    "the tank ends at " + text(end) + ", beyond the shelf (" + text(rack.widthM()) + ")",
                    "a tank that ends on its shelf; a shorter tank, or a wider rack");
        }
    }

    private void apart(List<Spot<Tank>> tanks) {
        List<Spot<Tank>> fromLeft = tanks.stream()
                .sorted(Comparator.comparingDouble(tank -> tank.value().xM()))
                .toList();
        for (int i = 1; i < fromLeft.size(); i++) {
            Tank left = fromLeft.get(i - 1).value();
            Spot<Tank> right = fromLeft.get(i);
            double end = left.xM() + left.outside().lengthM();
            if (right.value().xM() < end - ROUNDING_M) {
                problems.add(
                        right.place().key("x_m"),
                        text(right.value().xM()) + " lies inside the tank \"" + left.id()
                                + "\" beside it, which ends at " + text(end),
                        "at least " + text(end));
            }
        }
    }

    private void water(Spot<Tank> spot) {
        Tank tank = spot.value();
        double height = tank.outside().heightM();
        if (tank.waterDepthM() > height) {
            problems.add(
                    spot.place().key("water_depth_m"),
                    text(tank.waterDepthM()) + " is deeper than the tank is high (" + text(height) + ")",
                    "at most " + text(height) + ", measured from the water line to the bottom glass");
        }
        spot.inside("outlets", Tank::outlets).forEach(outlet -> release(outlet, tank.waterDepthM()));
    }

    private void release(Spot<Outlet> outlet, double waterM) {
        outlet.value().depthM().ifPresent(depth -> {
            if (depth > waterM) {
                problems.add(
                        outlet.place().key("depth_m"),
                        text(depth) + " is deeper than the water (" + text(waterM) + ")",
                        "at most " + text(waterM) + ", measured from the water line to the air release");
            }
        });
    }

    /** To a tenth of a millimetre: sums of typed sizes have no more to say. */
    private static String text(double x) {
        return NumberText.of(Math.rint(x * 1e4) / 1e4);
    }
}
