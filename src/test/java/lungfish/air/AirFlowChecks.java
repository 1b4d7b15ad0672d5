package lungfish.air;

import static lungfish.validation.Measures.FOOT_M;
import static lungfish.validation.Measures.INCH_M;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** How this package computes the published rows about air in pipes, fittings and blowers. */
public final class AirFlowChecks {
    /** Radius for geopotential altitude and lapse rate: US Standard Atmosphere 1976. */
    private static final double EARTH_M = 6_356_766.0;

    private static final double STANDARD_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;

    private AirFlowChecks() {}

    /** Pressure, density and viscosity of the standard atmosphere and of air. */
    public static CheckGroup properties() {
        return CheckGroup.of(
                        "Air",
                        "Ideal gas, ISO 2533 pressure, Sutherland viscosity. Altitudes of the table are geometric; ours is geopotential.",
                        "air-properties.json")
                .by("pressure", in -> Atmosphere.pressurePa(geopotentialM(in)) / 100.0)
                .by("density", AirFlowChecks::standardDensity)
                .by("viscosity", in -> Air.viscosityPaS(temperatureK(in)))
                .by("kinematic-viscosity", in -> Air.viscosityPaS(standardK(in)) / standardDensity(in));
    }

    /** Friction factors. */
    public static CheckGroup friction() {
        return CheckGroup.of(
                        "Friction factor",
                        "Darcy form, Churchill 1977 in every regime. Fanning factors of some books have been multiplied by four.",
                        "friction.json")
                .by("darcy", in -> Friction.darcy(in.number("reynolds_number"), in.number("relative_roughness")));
    }

    /** Worked examples of air in pipes. */
    public static CheckGroup workedExamples() {
        return CheckGroup.of(
                        "Air in pipes: worked examples",
                        "Our pipe law with each book's inputs. Where the book gives its friction factor, f L/D enters as a loss factor.",
                        "worked-pipes.json")
                .by("incompressible-fixed-friction", PipeExamples::laminarFallKPa)
                .by("incompressible", PipeExamples::turbulentFallKPa)
                .by("bore-of-flow", PipeExamples::boreM)
                .by("half-way-pressure", PipeExamples::halfWayPa)
                .by("outlet-with-acceleration", PipeExamples::outletAtmospheres)
                .by("fall-fixed-friction", PipeExamples::ductFallPsi)
                .by("vent-flow", PipeExamples::ventCubicFeetPerS);
    }

    /** The handbook table of compressed air in steel pipe. */
    public static CheckGroup compressedAirTable() {
        return CheckGroup.of(
                        "Compressed air in Schedule 40 steel pipe",
                        "The table takes the density of its inlet all along, so ours is Δ(p²)/(2 p1).",
                        "compressed-air-table.json")
                .by("fall-at-inlet-density", PipeTables::compressedAirFallPsi);
    }

    /** Capacity tables of the fuel gas code. */
    public static CheckGroup fuelGasTables() {
        return CheckGroup.of(
                        "Fuel gas code capacities",
                        "Natural gas through our pipe law. The Reynolds numbers, 1300 to 180 000, are those of a fish room's loop.",
                        "fuel-gas-tables.json")
                .by("capacity", PipeTables::gasCapacityCubicFeetPerH)
                .by("gravity-multiplier", PipeTables::gravityMultiplier);
    }

    /** Loss factors that the formulas hold. */
    public static CheckGroup fittings() {
        return CheckGroup.of(
                        "Fittings, ball valve, orifice",
                        "Loss factors that stand in formulas; those of bought fittings are checked with the catalogue.",
                        "fittings.json")
                .by("entrance", in -> Fittings.ENTRANCE)
                .by("exit", in -> Fittings.EXIT)
                .by("orifice", in -> Orifice.DISCHARGE_COEFFICIENT)
                .by("ball-valve", AirFlowChecks::ballLoss)
                .by(
                        "equivalent-length",
                        in -> Fittings.equivalentLengthM(in.number("L_over_D"), INCH_M * in.number("inner_diameter_in"))
                                / FOOT_M);
    }

    /** Heat and work of blowers, and what heat leaves of PVC. */
    public static CheckGroup compression() {
        return CheckGroup.of(
                        "Compression and warm pipe",
                        "Adiabatic law over an efficiency, exponent 0.283.",
                        "compression.json")
                .by("arasu-flow", in -> BlowerExample.volumeM3PerS(in) * BlowerExample.inletDensity(in))
                .by("arasu-volume", BlowerExample::volumeM3PerS)
                .by("arasu-exit", BlowerExample::exitK)
                .by("arasu-pressure", in -> BlowerExample.outletPa(in) / 1000.0)
                .by("power", BlowerExample::powerKw)
                .by("pvc-factor", in -> PipeHeat.pvcFactor(Measures.fahrenheitK(in.number("temperature_F")))
                        .orElse(Double.NaN));
    }

    private static double ballLoss(Inputs in) {
        double opening =
                switch (in.text("fitting")) {
                    case "ball valve, fully open" -> 1.0;
                    case "ball valve, 1/3 closed" -> 2.0 / 3.0;
                    case "ball valve, 2/3 closed" -> 1.0 / 3.0;
                    default -> Double.NaN;
                };
        return 0.05 * ValveCurve.BALL.lossRatio(opening);
    }

    private static double standardDensity(Inputs in) {
        return Air.densityKgPerM3(Atmosphere.pressurePa(geopotentialM(in)), standardK(in));
    }

    private static double standardK(Inputs in) {
        return STANDARD_K - LAPSE_K_PER_M * geopotentialM(in);
    }

    private static double geopotentialM(Inputs in) {
        double geometric = in.number("geometric_altitude_m", Double.NaN);
        return in.number("geopotential_altitude_m", EARTH_M * geometric / (EARTH_M + geometric));
    }

    private static double temperatureK(Inputs in) {
        return in.number("temperature_K", in.number("temperature_C", Double.NaN) + Air.ZERO_CELSIUS_K);
    }
}
