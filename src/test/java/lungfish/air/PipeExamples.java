package lungfish.air;

import static lungfish.validation.Measures.CUBIC_FOOT_M3;
import static lungfish.validation.Measures.FOOT_M;
import static lungfish.validation.Measures.INCH_M;
import static lungfish.validation.Measures.INCH_WATER_PA;
import static lungfish.validation.Measures.POUND_FORCE_N;
import static lungfish.validation.Measures.PSI_PA;
import static lungfish.validation.Measures.UNIVERSAL_J_PER_KMOL_K;

import lungfish.validation.Inputs;

/** Textbook examples of one pipe, each with the book's inputs and our law. */
final class PipeExamples {
    private static final double OUTLET_PA = 101325.0;

    /** A gas whose viscosity no one asks for, because the friction factor is given. */
    private static final double ANY_VISCOSITY = 1.8e-5;

    private PipeExamples() {}

    /** Laminar by decree: f = 64/Re enters as a loss factor. */
    static double laminarFallKPa(Inputs in) {
        double bore = in.number("inner_diameter_mm") / 1000.0;
        double re = in.number("density_kg_m3") * in.number("mean_velocity_m_s") * bore / in.number("viscosity_Pa_s");
        double darcy = Friction.LAMINAR_DARCY_TIMES_RE / re;
        return fallKPa(in, new Tube(0.0, bore, 0.0, darcy * in.number("length_m") / bore));
    }

    static double turbulentFallKPa(Inputs in) {
        double bore = in.number("inner_diameter_mm") / 1000.0;
        return fallKPa(in, new Tube(in.number("length_m"), bore, in.number("roughness_mm") / 1000.0, 0.0));
    }

    private static double fallKPa(Inputs in, Tube tube) {
        double density = in.number("density_kg_m3");
        double temperature = OUTLET_PA / (Air.GAS_CONSTANT_J_PER_KG_K * density);
        Gas gas = new Gas(Air.GAS_CONSTANT_J_PER_KG_K, in.number("viscosity_Pa_s"));
        double flow = density * in.number("mean_velocity_m_s") * tube.areaM2();
        // half the fall of π over the pressure: the fall at one density, as the book has it
        return PipeLaw.of(tube, gas, temperature).piDropPa2(flow) / (2.0 * OUTLET_PA) / 1000.0;
    }

    /** The bore at which our flow between the pressures is the book's. */
    static double boreM(Inputs in) {
        double narrow = 0.01;
        double wide = 0.1;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (narrow + wide);
            boolean tooNarrow = masseyFlow(in, middle) < in.number("mass_flow_kg_s");
            narrow = tooNarrow ? middle : narrow;
            wide = tooNarrow ? wide : middle;
        }
        return wide;
    }

    private static double masseyFlow(Inputs in, double bore) {
        Tube tube = new Tube(0.0, bore, 0.0, in.number("darcy_f") * in.number("length_m") / bore);
        Gas gas = new Gas(in.number("R_J_kgK"), ANY_VISCOSITY);
        return PipeFlow.flowWithAccelerationKgPerS(
                tube, gas, in.number("temperature_K"), in.number("inlet_pressure_Pa"), in.number("outlet_pressure_Pa"));
    }

    /** Any pipe will do: half its loss with the flow that the whole lets through. */
    static double halfWayPa(Inputs in) {
        Gas air = Gas.airAt(288.0);
        double inlet = in.number("inlet_pressure_Pa");
        double flow = PipeFlow.flowKgPerS(
                new Tube(145.0, 0.041, 0.0, 0.0), air, 288.0, inlet, in.number("outlet_pressure_Pa"));
        return PipeFlow.outletPa(new Tube(72.5, 0.041, 0.0, 0.0), air, 288.0, inlet, flow)
                .orElse(Double.NaN);
    }

    static double outletAtmospheres(Inputs in) {
        double bore = in.number("inner_diameter_m");
        double inlet = in.number("inlet_pressure_atm") * Atmosphere.SEA_LEVEL_PA;
        double temperature = in.number("temperature_K");
        Gas gas = new Gas(UNIVERSAL_J_PER_KMOL_K / in.number("molar_mass_kg_kmol"), ANY_VISCOSITY);
        Tube tube = new Tube(0.0, bore, 0.0, in.number("darcy_f") * in.number("length_m") / bore);
        double flow = gas.densityKgPerM3(inlet, temperature) * in.number("inlet_velocity_m_s") * tube.areaM2();
        return PipeFlow.outletWithAccelerationPa(tube, gas, temperature, inlet, flow)
                        .orElse(Double.NaN)
                / Atmosphere.SEA_LEVEL_PA;
    }

    static double ductFallPsi(Inputs in) {
        double bore = in.number("inner_diameter_ft") * FOOT_M;
        double inlet = in.number("pressure_psia") * PSI_PA;
        double temperature = in.number("temperature_R") / 1.8;
        Gas gas = new Gas(UNIVERSAL_J_PER_KMOL_K / in.number("molar_mass"), ANY_VISCOSITY);
        Tube tube = new Tube(0.0, bore, 0.0, in.number("darcy_f") * in.number("length_ft") * FOOT_M / bore);
        double volume = in.number("volume_flow_cfm") * CUBIC_FOOT_M3 / 60.0;
        double flow = gas.densityKgPerM3(inlet, temperature) * volume;
        double outlet = PipeFlow.outletPa(tube, gas, temperature, inlet, flow).orElse(Double.NaN);
        return (inlet - outlet) / PSI_PA;
    }

    static double ventCubicFeetPerS(Inputs in) {
        double bore = in.number("inner_diameter_in") * INCH_M;
        double losses = in.number("K_entrance")
                + in.number("K_elbow") * in.number("elbow_count")
                + in.number("K_exit")
                + in.number("darcy_f") * in.number("length_ft") * FOOT_M / bore;
        double density = in.number("specific_weight_lb_ft3") * POUND_FORCE_N / CUBIC_FOOT_M3 / Water.GRAVITY_M_PER_S2;
        double temperature = OUTLET_PA / (Air.GAS_CONSTANT_J_PER_KG_K * density);
        double inlet = OUTLET_PA + in.number("available_pressure_inwc") * INCH_WATER_PA;
        Gas gas = new Gas(Air.GAS_CONSTANT_J_PER_KG_K, ANY_VISCOSITY);
        double flow = PipeFlow.flowKgPerS(new Tube(0.0, bore, 0.0, losses), gas, temperature, inlet, OUTLET_PA);
        return flow / density / CUBIC_FOOT_M3;
    }
}
