package lungfish.network;

import lungfish.air.Air;
import lungfish.air.Atmosphere;
import lungfish.air.Water;

/**
 * What holds everywhere in one network: the room's air, the water, and the conventions of the model.
 *
 * @param ambientPa absolute pressure of the room, above 0
 * @param roomTemperatureK temperature at which free air is counted
 * @param pipeTemperatureK temperature of the air inside pipes, airlines and valves: its viscosity and its R T
 * @param waterDensityKgPerM3 of the tanks
 * @param gravityMPerS2 acceleration of fall
 * @param logTerm whether the acceleration term {@code 2 ln(p_up/p_down)} belongs to the law of pipe and airline
 * @param servedBand share of its target by which a drop may miss it and still count as served
 */
public record Conditions(
        double ambientPa,
        double roomTemperatureK,
        double pipeTemperatureK,
        double waterDensityKgPerM3,
        double gravityMPerS2,
        boolean logTerm,
        double servedBand) {
    /** Density of pure water at 20 °C, kg/m³ (rounded from the standard-mean-ocean-water table of 998.207). */
    public static final double WATER_AT_20_C_KG_PER_M3 = 998.2;

    private static final double TWENTY_CELSIUS_K = 293.15;
    private static final double USUAL_SERVED_BAND = 0.05;

    /** Checks what can only be a mistake of the program: each number finite, the first four above zero. */
    public Conditions {
        Part.above0("ambientPa", ambientPa);
        Part.above0("roomTemperatureK", roomTemperatureK);
        Part.above0("pipeTemperatureK", pipeTemperatureK);
        Part.above0("waterDensityKgPerM3", waterDensityKgPerM3);
        Part.from0("gravityMPerS2", gravityMPerS2);
        Part.from0("servedBand", servedBand);
    }

    /** Sea level, 20 °C in room and pipe, fresh water, no acceleration term, a served band of 5 %. */
    public static Conditions usual() {
        return new Conditions(
                Atmosphere.SEA_LEVEL_PA,
                TWENTY_CELSIUS_K,
                TWENTY_CELSIUS_K,
                WATER_AT_20_C_KG_PER_M3,
                Water.GRAVITY_M_PER_S2,
                false,
                USUAL_SERVED_BAND);
    }

    /** Density of free air, kg/m³: the factor between a flow in m³/s and the mass that the pipe conserves. */
    public double airDensityKgPerM3() {
        return Air.densityKgPerM3(ambientPa, roomTemperatureK);
    }

    /** Pressure under a depth of water, Pa. */
    public double waterColumnPa(double depthM) {
        return waterDensityKgPerM3 * gravityMPerS2 * depthM;
    }
}
