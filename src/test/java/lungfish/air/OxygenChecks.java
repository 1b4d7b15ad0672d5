package lungfish.air;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** How this package computes the published rows about dissolved oxygen. */
public final class OxygenChecks {
    private static final double CM_PER_H = 100.0 * 3600.0;

    /** A mmol of oxygen is 32 mg. */
    private static final double MMOL_PER_KG = 1e6 / 32.0;

    private OxygenChecks() {}

    /** Saturation against moist air, and partial pressure. */
    public static CheckGroup saturation() {
        return CheckGroup.of("Dissolved oxygen", "Benson and Krause 1984 with salinity and pressure.", "oxygen.json")
                .by("saturation", in -> saturation(in, in.number("salinity_g_per_kg")))
                .by(
                        "with-chloride",
                        in -> saturation(in, DissolvedOxygen.SALINITY_PER_CHLORINITY * in.number("chloride_g_per_L")))
                .by("at-altitude", OxygenChecks::atAltitude)
                .by("partial-pressure", OxygenChecks::atPartialPressure);
    }

    /** What fish use, what a still surface and bubbles bring. */
    public static CheckGroup balance() {
        return CheckGroup.of(
                        "Oxygen used and brought",
                        "Use of resting fish is the likely figure; the cautious one is three times that.",
                        "oxygen-balance.json")
                .by("likely-use", OxygenChecks::likelyMgPerKgH)
                .by("likely-use-of-one", OxygenChecks::likelyMmolPerH)
                .by("warmth-of-use", OxygenChecks::warmthOfUse)
                .by("fed-use", in -> Respiration.FED_FACTOR * in.number("unfed_mg_per_kg_h"))
                .by(
                        "ammonia",
                        in -> Respiration.ammoniaNitrogenKgPerS(
                                in.number("feed_kg_per_day"), in.number("protein_fraction")))
                .by("nitrification", in -> Respiration.OXYGEN_PER_AMMONIA_NITROGEN)
                .by("likely-zero-wind", in -> StillSurface.LIKELY_M_PER_S * CM_PER_H)
                .by("lowest-zero-wind", in -> StillSurface.LOWEST_M_PER_S * CM_PER_H)
                .by("highest-zero-wind", in -> StillSurface.HIGHEST_M_PER_S * CM_PER_H)
                .by("schmidt", in -> StillSurface.schmidt(kelvin(in)))
                .by("velocity", in -> StillSurface.velocityMPerS(in.number("k600_cm_per_h"), kelvin(in)))
                .by("warming", in -> StillSurface.warming(kelvin(in), in.number("reference_C") + Air.ZERO_CELSIUS_K))
                .by("time-to-limit", OxygenChecks::hoursToLimit)
                .by("oxygen-in-air", OxygenChecks::oxygenGPerH)
                .by("field-ratio", OxygenChecks::fieldRatio)
                .by("sote-fine", in -> Aeration.FINE_PER_M * 100.0)
                .by("sote-coarse", in -> Aeration.COARSE_PER_M * 100.0);
    }

    private static double likelyMgPerKgH(Inputs in) {
        double fishKg = in.number("fish_mass_g") / 1000.0;
        return Respiration.likelyKgPerS(fishKg, kelvin(in)) * 1e6 * 3600.0 / fishKg;
    }

    private static double likelyMmolPerH(Inputs in) {
        return Respiration.likelyKgPerS(in.number("fish_mass_g") / 1000.0, kelvin(in)) * MMOL_PER_KG * 3600.0;
    }

    private static double warmthOfUse(Inputs in) {
        return Respiration.likelyKgPerS(1.0, in.number("warm_C") + Air.ZERO_CELSIUS_K)
                / Respiration.likelyKgPerS(1.0, in.number("cold_C") + Air.ZERO_CELSIUS_K);
    }

    private static double hoursToLimit(Inputs in) {
        double exchange = in.number("k_m_per_h", 0.0) * in.number("surface_m2", 0.0) / 3600.0;
        return StillSurface.secondsUntil(
                                exchange,
                                in.number("volume_L") / 1000.0,
                                in.number("oxygen_use_mg_per_h") / 1000.0 / 3600.0,
                                in.number("Cs_mg_per_L", 0.0),
                                in.number("start_mg_per_L"),
                                in.number("limit_mg_per_L"))
                        .orElse(Double.NaN)
                / 3600.0;
    }

    private static double oxygenGPerH(Inputs in) {
        FreeAir room = FreeAir.at(0.0, in.number("temperature_C") + Air.ZERO_CELSIUS_K);
        double air = room.flowKgPerS(Measures.litresPerMinuteM3PerS(in.number("air_L_per_min")));
        return Aeration.oxygenKgPerS(air) * 1000.0 * 3600.0;
    }

    private static double fieldRatio(Inputs in) {
        return Aeration.fieldRatio(
                water(in, 0.0),
                in.number("do_mg_per_L"),
                Atmosphere.SEA_LEVEL_PA,
                in.number("alpha"),
                in.number("beta"));
    }

    private static double saturation(Inputs in, double salinity) {
        double ambientPa = in.number("pressure_atm", 1.0) * Atmosphere.SEA_LEVEL_PA;
        return DissolvedOxygen.saturationGPerM3(water(in, salinity), ambientPa);
    }

    private static double atAltitude(Inputs in) {
        return DissolvedOxygen.saturationGPerM3(
                water(in, in.number("salinity_g_per_kg")), Atmosphere.pressurePa(in.number("altitude_m")));
    }

    private static double atPartialPressure(Inputs in) {
        return DissolvedOxygen.atPartialPressureGPerM3(water(in, 0.0), in.number("pcrit_kPa") * 1000.0);
    }

    private static Water water(Inputs in, double salinity) {
        return new Water(kelvin(in), salinity);
    }

    private static double kelvin(Inputs in) {
        return in.number("water_temperature_C") + Air.ZERO_CELSIUS_K;
    }
}
