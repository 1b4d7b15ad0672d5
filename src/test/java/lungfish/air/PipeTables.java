package lungfish.air;

import static lungfish.validation.Measures.CUBIC_FOOT_M3;
import static lungfish.validation.Measures.FOOT_M;
import static lungfish.validation.Measures.INCH_M;
import static lungfish.validation.Measures.INCH_MERCURY_PA;
import static lungfish.validation.Measures.INCH_WATER_PA;
import static lungfish.validation.Measures.PSI_PA;

import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** Cells of printed pipe tables, through our pipe law. */
final class PipeTables {
    private static final double ATMOSPHERE_PSIA = 14.7;

    private PipeTables() {}

    static double compressedAirFallPsi(Inputs in) {
        double temperature = Measures.fahrenheitK(in.number("temperature_F"));
        double inlet = (in.number("inlet_pressure_psig") + ATMOSPHERE_PSIA) * PSI_PA;
        double free = in.number("free_air_scfm_60F_14_7psia") * CUBIC_FOOT_M3 / 60.0;
        double flow = free * Air.densityKgPerM3(ATMOSPHERE_PSIA * PSI_PA, temperature);
        PipeLaw law = PipeLaw.of(tube(in), Gas.airAt(temperature), temperature);
        return law.piDropPa2(flow) / (2.0 * inlet) / PSI_PA;
    }

    static double gasCapacityCubicFeetPerH(Inputs in) {
        double temperature = Measures.fahrenheitK(in.number("temperature_F"));
        double base = in.number("base_pressure_inHg") * INCH_MERCURY_PA;
        double inlet = base + in.number("supply_gauge_inwc") * INCH_WATER_PA;
        double outlet = inlet - in.number("pressure_drop_inwc") * INCH_WATER_PA;
        Gas gas = gas(in.number("specific_gravity"), in.number("viscosity_cP"));
        double flow = PipeFlow.flowKgPerS(tube(in), gas, temperature, inlet, outlet);
        return flow / gas.densityKgPerM3(base, temperature) / CUBIC_FOOT_M3 * 3600.0;
    }

    /** Capacity of a gas of this gravity over that of the table's 0.60: 100 ft of 1 inch steel at half an inch of water. */
    static double gravityMultiplier(Inputs in) {
        return oneInchVolume(in.number("specific_gravity")) / oneInchVolume(0.60);
    }

    private static double oneInchVolume(double gravity) {
        Gas gas = gas(gravity, 0.012);
        double base = 30.0 * INCH_MERCURY_PA;
        double inlet = base + 6.0 * INCH_WATER_PA;
        double temperature = Measures.fahrenheitK(60.0);
        Tube pipe = new Tube(100.0 * FOOT_M, 1.049 * INCH_M, 0.00015 * FOOT_M, 0.0);
        double flow = PipeFlow.flowKgPerS(pipe, gas, temperature, inlet, inlet - 0.5 * INCH_WATER_PA);
        return flow / gas.densityKgPerM3(base, temperature);
    }

    private static Gas gas(double gravity, double centipoise) {
        return new Gas(Air.GAS_CONSTANT_J_PER_KG_K / gravity, centipoise / 1000.0);
    }

    private static Tube tube(Inputs in) {
        double roughness = in.number("roughness_ft", Double.NaN) * FOOT_M;
        return new Tube(
                in.number("length_ft") * FOOT_M,
                in.number("inner_diameter_in") * INCH_M,
                in.number("roughness_mm", roughness * 1000.0) / 1000.0,
                0.0);
    }
}
