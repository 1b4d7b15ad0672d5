package lungfish.blower;

import java.util.List;
import lungfish.air.Atmosphere;
import lungfish.air.FreeAir;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;

/**
 * What one machine draws: straight between the points of its class, over the pressure inside it; the end values outside. A
 * side-channel machine takes pressure and power in proportion to the density of its air, see {@link Corrected}.
 */
final class Power {
    private Power() {}

    /** By how much thin air lowers pressure and power of a class. */
    static double pressureFactor(BlowerClass kind, FreeAir room) {
        return kind.kind() == BlowerClass.Kind.SIDE_CHANNEL ? room.pressurePa() / Atmosphere.SEA_LEVEL_PA : 1;
    }

    /** W of one machine that makes this pressure inside. */
    static double watts(BlowerClass kind, double insidePa, FreeAir room) {
        double factor = pressureFactor(kind, room);
        return factor * between(kind.points(), insidePa / factor);
    }

    private static double between(List<CurvePoint> points, double pa) {
        int above = 0;
        while (above < points.size() && points.get(above).gaugePa() < pa) {
            above++;
        }
        if (above == 0 || above == points.size()) {
            return points.get(above == 0 ? 0 : above - 1).watts();
        }
        CurvePoint before = points.get(above - 1);
        CurvePoint after = points.get(above);
        double share = (pa - before.gaugePa()) / (after.gaugePa() - before.gaugePa());
        return before.watts() + share * (after.watts() - before.watts());
    }
}
