package lungfish.air;

/**
 * The state at which a flow is called free air: that of the room.
 *
 * @param pressurePa ambient, absolute
 * @param temperatureK of the room
 */
public record FreeAir(double pressurePa, double temperatureK) {
    public FreeAir {
        Checks.positive(pressurePa, "ambient pressure");
        Checks.positive(temperatureK, "room temperature");
    }

    /** Of a room at an altitude. */
    public static FreeAir at(double altitudeM, double temperatureK) {
        return new FreeAir(Atmosphere.pressurePa(altitudeM), temperatureK);
    }

    /** kg/m³. */
    public double densityKgPerM3() {
        return Air.densityKgPerM3(pressurePa, temperatureK);
    }

    /** Mass flow, kg/s, of a free-air flow. */
    public double flowKgPerS(double freeAirM3PerS) {
        return freeAirM3PerS * densityKgPerM3();
    }

    /** Free-air flow, m³/s, of a mass flow. */
    public double flowM3PerS(double flowKgPerS) {
        return flowKgPerS / densityKgPerM3();
    }
}
