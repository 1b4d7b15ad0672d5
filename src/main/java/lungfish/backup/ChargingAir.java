package lungfish.backup;

import lungfish.catalogue.BatteryClass;
import lungfish.room.Backup.Battery;

/** Fresh air that a charging lead-acid battery needs. */
public final class ChargingAir {
    private static final double CELL_V = 2;
    private static final double COULOMB_PER_AH = 3600;

    private ChargingAir() {}

    /**
     * {@code Q = 0.05 n I_gas C/1000}, IEC 62485-2, which keeps hydrogen below its limit of 4 % with a factor of 5 to
     * spare.
     *
     * @param cells n, in series
     * @param gasMaPerAh gas current: 5 floating and 20 boosting a flooded one, 1 and 8 a sealed one
     * @param chargeAh C
     * @return m³ an hour
     */
    public static double m3PerHour(double cells, double gasMaPerAh, double chargeAh) {
        return 0.05 * cells * gasMaPerAh * chargeAh / 1000;
    }

    /** Of a battery of the room, boosted; 0 where it gives off none. */
    static double m3PerHour(Battery battery, BatteryClass kind) {
        double cells = battery.count() * battery.voltageV() / CELL_V;
        return m3PerHour(cells, kind.gasMaPerAh(), battery.capacityC() / COULOMB_PER_AH);
    }
}
