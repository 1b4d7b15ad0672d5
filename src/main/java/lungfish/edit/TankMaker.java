package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.TankSize;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** New tanks and outlets that say no more than what was drawn: everything else is unknown. */
final class TankMaker {
    private TankMaker() {}

    static Tank tank(TankId id, String name, double xM, TankSize size, List<Outlet> outlets) {
        return tank(id, name, xM, TankEdits.outside(size), size.waterDepthM(), outlets);
    }

    static Tank tank(TankId id, String name, double xM, Tank.Size outside, double waterDepthM, List<Outlet> outlets) {
        return new Tank(
                id,
                name,
                Tank.Kind.TANK,
                xM,
                outside,
                waterDepthM,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                outlets);
    }

    static Outlet outlet(OutletId id, String device) {
        return new Outlet(
                id,
                device,
                Outlet.Flow.UNKNOWN,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Outlet.Use.ALWAYS,
                Optional.empty(),
                Optional.empty());
    }
}
