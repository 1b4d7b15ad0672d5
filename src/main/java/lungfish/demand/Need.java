package lungfish.demand;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.reason.Given;
import lungfish.room.OutletId;
import lungfish.room.Seat;

/**
 * What one outlet needs.
 *
 * @param depthM of the air release below the water line
 * @param waterDensityKgPerM3 of its tank
 * @param targetM3PerS free air that it should get
 * @param leastM3PerS free air below which it no longer does its work
 * @param mostM3PerS the most that it, or what lives there, bears
 * @param lifted water that the target moves, where the device has an uplift tube
 */
public record Need(
        Seat seat,
        DeviceClass device,
        Given depthM,
        double waterDensityKgPerM3,
        Given targetM3PerS,
        double leastM3PerS,
        OptionalDouble mostM3PerS,
        Optional<Lifted> lifted) {
    /** Water moved by the target, m³/s, and whether the tube lies inside the range where that is known. */
    public record Lifted(double waterM3PerS, boolean inRange) {}

    public OutletId id() {
        return seat.outlet().id();
    }

    /** Whether it must stay on when air is short. */
    public boolean essential() {
        return seat.outlet().essential().orElse(false);
    }

    /** What its device takes in this state. */
    public Resistance resistance(Upkeep upkeep) {
        return switch (upkeep) {
            case CLEAN -> device.clean();
            case DUE -> device.due();
        };
    }
}
