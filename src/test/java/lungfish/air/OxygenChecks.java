package lungfish.air;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** How this package computes the published rows about dissolved oxygen. */
public final class OxygenChecks {
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
        return new Water(in.number("water_temperature_C") + Air.ZERO_CELSIUS_K, salinity);
    }
}
