package lungfish.network;

import java.util.List;

/** A drop alone, without its network: what it needs for a flow, and what it takes at a pressure. */
public final class Drops {
    private Drops() {}

    /** Gauge pressure at the tap at or below which the drop takes nothing, Pa: water, bubbling and opening pressure. */
    public static double opensAtGaugePa(Conditions conditions, Drop drop) {
        return new DropLaws(conditions, List.of(drop), Laws.WRITTEN).opensAtGaugePa(0);
    }

    /**
     * What the drop needs at its tap with its valve fully open, term by term.
     *
     * @param freeM3PerS free air, 0 or more
     */
    public static DropNeed needed(Conditions conditions, Drop drop, double freeM3PerS) {
        return needed(conditions, drop, drop.valveKOpen(), freeM3PerS);
    }

    /**
     * What the drop needs at its tap, term by term from the water up.
     *
     * @param valveK setting of its valve, 1/m⁴
     * @param freeM3PerS free air, 0 or more
     */
    public static DropNeed needed(Conditions conditions, Drop drop, double valveK, double freeM3PerS) {
        DropLaws law = new DropLaws(conditions, List.of(drop), Laws.WRITTEN);
        double kgPerS = freeM3PerS * conditions.airDensityKgPerM3();
        Device device = drop.device().orElse(DropLaws.NO_DEVICE);
        Check check = drop.check().orElse(DropLaws.NO_CHECK);
        double waterPa = conditions.waterColumnPa(drop.depthM());
        double devicePa = device.p0Pa() + freeM3PerS * (device.aPaSPerM3() + freeM3PerS * device.bPaS2PerM6());
        double checkPa = check.openPa() + check.slopePaSPerM3() * freeM3PerS;
        double airlineHeadPa = law.gaugeOf(law.psiBehindValve(0, kgPerS));
        double tapPa = law.gaugeOf(law.psiWithValve(0, kgPerS, valveK));
        double airlinePa = airlineHeadPa - (waterPa + devicePa + checkPa);
        return new DropNeed(waterPa, devicePa, checkPa, airlinePa, tapPa - airlineHeadPa);
    }

    /** Gauge pressure that the drop needs at its tap for a flow with its valve fully open, Pa. */
    public static double neededPa(Conditions conditions, Drop drop, double freeM3PerS) {
        return needed(conditions, drop, freeM3PerS).totalPa();
    }

    /**
     * Free air that the drop takes, with its valve as set, m³/s. Rises with the pressure, and is 0 at or below the
     * opening pressure.
     */
    public static double flowAt(Conditions conditions, Drop drop, double tapGaugePa) {
        DropLaws law = new DropLaws(conditions, List.of(drop), Laws.WRITTEN);
        double tapPsi = tapGaugePa * (tapGaugePa + 2.0 * conditions.ambientPa());
        return law.flowAt(0, tapPsi) / conditions.airDensityKgPerM3();
    }
}
