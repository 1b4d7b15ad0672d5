package lungfish.edit;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.Tank;

/** Depths of air releases when the water line moves: devices stand where they stand. */
final class Depths {
    private Depths() {}

    /** The depth, in water of another depth, of what is as high above the bottom glass; 0 where it would stand out. */
    static double overTheBottom(double depthM, double waterM, double otherWaterM) {
        return Math.min(otherWaterM, Math.max(0, Metres.clean(depthM + otherWaterM - waterM)));
    }

    /** The tank filled to another depth, its devices left where they stand. */
    static Tank filled(Tank tank, double waterM) {
        List<Outlet> outlets = Each.changed(tank.outlets(), outlet -> refilled(outlet, tank.waterDepthM(), waterM));
        return tank.filledToM(waterM).withOutlets(outlets);
    }

    private static Outlet refilled(Outlet outlet, double waterM, double otherM) {
        OptionalDouble depth = outlet.depthM();
        return depth.isEmpty() || !(otherM > 0)
                ? outlet
                : outlet.withDepthM(OptionalDouble.of(overTheBottom(depth.getAsDouble(), waterM, otherM)));
    }
}
