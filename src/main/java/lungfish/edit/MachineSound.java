package lungfish.edit;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Blower;

/** Whether what is said of a machine makes sense: numbers with a wrong unit or sign are caught here. */
final class MachineSound {
    private static final int MOST_MACHINES = 1000;
    private static final double LOUDEST_DB = 200;
    private static final double OLDEST_S = 1e10;
    private static final double COLDEST_K = 200;
    private static final double WARMEST_K = 400;
    private static final double LONGEST_HOSE_M = 100;
    private static final double WIDEST_PORT_M = 1;
    private static final double MOST_PA = 1e6;

    private MachineSound() {}

    static void look(Blower blower, List<Refused> troubles) {
        Blower.Fittings fitted = blower.fittings();
        boolean sound = blower.count() >= 1
                && blower.count() <= MOST_MACHINES
                && isFrom0(blower.ageS(), OLDEST_S)
                && isFrom0(blower.siting().wallDb(), LOUDEST_DB)
                && isFrom0(fitted.hoseM(), LONGEST_HOSE_M)
                && isAbove0(fitted.portM(), WIDEST_PORT_M)
                && isAbove0(fitted.reliefPa(), MOST_PA)
                && isAbove0(bleedPa(blower), MOST_PA)
                && isAir(blower.siting().intakeTemperatureK());
        if (!sound) {
            troubles.add(Refused.because(
                    "No " + blower.name() + " is like that.",
                    "Look at the sign and the unit of what was typed; leave empty what is not known."));
        }
    }

    private static OptionalDouble bleedPa(Blower blower) {
        return blower.bleed() instanceof Blower.BledTo bled ? bled.gaugePa() : OptionalDouble.empty();
    }

    private static boolean isFrom0(OptionalDouble value, double most) {
        double there = value.orElse(0);
        return there >= 0 && there <= most;
    }

    private static boolean isAbove0(OptionalDouble value, double most) {
        double there = value.orElse(most);
        return there > 0 && there <= most;
    }

    private static boolean isAir(OptionalDouble temperatureK) {
        double there = temperatureK.orElse(WARMEST_K);
        return there >= COLDEST_K && there <= WARMEST_K;
    }
}
