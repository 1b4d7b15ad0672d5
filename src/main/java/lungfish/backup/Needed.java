package lungfish.backup;

import lungfish.catalogue.BatteryClass;

/**
 * The battery for a wanted runtime.
 *
 * @param kind of battery: the room's, or one that would suit it
 * @param voltageV nominal
 * @param chargeC rated charge at that voltage, all of it, coulomb
 * @param forS the wanted runtime
 */
public record Needed(BatteryClass kind, double voltageV, double chargeC, double forS) {}
