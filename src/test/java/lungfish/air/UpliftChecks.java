package lungfish.air;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** How this package computes the published rows about water: its properties, the bubbles' release and the uplift tube. */
public final class UpliftChecks {
    private static final FreeAir LABORATORY = FreeAir.at(0.0, 293.15);

    private UpliftChecks() {}

    /** Measured airlifts. */
    public static CheckGroup airlift() {
        return CheckGroup.of(
                        "Airlift",
                        "Stenning and Martin balance with a lumped foot loss of 14.5; water and air at 20 °C, sea level.",
                        "airlift.json")
                .by("water-flow", UpliftChecks::waterLitresPerMinute);
    }

    /** Water and the pressure of a release. */
    public static CheckGroup outlets() {
        return CheckGroup.of("Water and the release of bubbles", "Clean water.", "water.json")
                .by("column", in -> Water.freshAt(293.15).columnPa(in.number("depth_m")) / 1000.0)
                .by(
                        "bubbling",
                        in -> BubblingPressure.pa(
                                        in.number("surface_tension_N_per_m"), in.number("pore_diameter_mm") / 1000.0)
                                / 1000.0)
                .by("water-density", UpliftChecks::densityKgPerM3)
                .by("surface-tension", in -> fresh(in).surfaceTensionNPerM() * 1000.0)
                .by("water-viscosity", in -> fresh(in).viscosityPaS() * 1000.0);
    }

    private static double waterLitresPerMinute(Inputs in) {
        double riser = in.number("riser_length_m");
        Airlift lift =
                new Airlift(in.number("tube_diameter_mm") / 1000.0, riser, riser * in.number("submergence_ratio"), 0.0);
        double air = Measures.litresPerMinuteM3PerS(in.number("air_free_L_per_min"));
        return lift.waterM3PerS(air, Water.freshAt(293.15), LABORATORY) * 60_000.0;
    }

    private static double densityKgPerM3(Inputs in) {
        double kelvin = in.number("temperature_C") + Air.ZERO_CELSIUS_K;
        return new Water(kelvin, in.number("salinity_g_per_kg")).densityKgPerM3();
    }

    private static Water fresh(Inputs in) {
        return Water.freshAt(in.number("temperature_C") + Air.ZERO_CELSIUS_K);
    }
}
