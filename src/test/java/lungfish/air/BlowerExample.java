package lungfish.air;

import lungfish.validation.Inputs;

/** Textbook blowers, with each book's inputs and our adiabatic law. */
final class BlowerExample {
    private static final double MM_WATER_PA = 9.80665;

    private BlowerExample() {}

    static double outletPa(Inputs in) {
        return inletPa(in) + in.number("pressure_rise_mm_water") * MM_WATER_PA;
    }

    static double inletDensity(Inputs in) {
        return inletPa(in) / (in.number("R_J_kgK") * in.number("inlet_temperature_K"));
    }

    /** The shaft's watts, less what bearings and blower lose, over the work on a cubic metre. */
    static double volumeM3PerS(Inputs in) {
        double watts = in.number("shaft_power_kW")
                * 1000.0
                * in.number("blower_efficiency")
                * in.number("mechanical_efficiency");
        return watts / Compression.powerW(inletPa(in), outletPa(in), 1.0, 1.0);
    }

    static double exitK(Inputs in) {
        double inlet = in.number("inlet_temperature_K");
        return inlet + Compression.riseK(inlet, inletPa(in), outletPa(in), in.number("blower_efficiency"));
    }

    static double powerKw(Inputs in) {
        return Compression.powerW(
                        inletPa(in),
                        in.number("outlet_pressure_kPa") * 1000.0,
                        in.number("inlet_volume_flow_m3_s"),
                        in.number("efficiency"))
                / 1000.0;
    }

    private static double inletPa(Inputs in) {
        return in.number("inlet_pressure_kPa") * 1000.0;
    }
}
