package lungfish.blower;

import lungfish.air.Compression;
import lungfish.air.FreeAir;
import lungfish.reason.PartId;

/**
 * How warm the air leaves a machine, between two ends: at the cool end it is compressed without loss, at the hot end every
 * watt that the machine draws stays in the air. The truth lies between, since the casing cools itself.
 *
 * @param machine the blower of the room that it leaves
 * @param inletK of the air that it draws
 * @param watts that its machines draw
 * @param coolK adiabatic compression at efficiency 1
 * @param hotK energy balance with all the power
 */
public record Discharge(PartId machine, double inletK, double watts, double coolK, double hotK) {
    /**
     * At an operating point.
     *
     * @param freeM3PerS through the machines, above 0
     * @param watts of the machines
     */
    public static Discharge at(Machine machine, double gaugePa, double freeM3PerS, double watts, FreeAir room) {
        double inletK = machine.intakeK().orElse(room.temperatureK());
        double outPa = room.pressurePa() + machine.machinePa(gaugePa, freeM3PerS);
        double coolK = inletK + Compression.riseK(inletK, room.pressurePa(), outPa, 1);
        double flow = room.flowKgPerS(freeM3PerS);
        double hotK = flow > 0 ? inletK + Compression.hottestRiseK(watts, flow) : coolK;
        return new Discharge(machine.part(), inletK, watts, coolK, Math.max(coolK, hotK));
    }
}
