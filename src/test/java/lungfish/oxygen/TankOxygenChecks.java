package lungfish.oxygen;

import lungfish.air.Air;
import lungfish.air.DissolvedOxygen;
import lungfish.air.Water;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumable;
import lungfish.room.Rooms;
import lungfish.room.Tank;
import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** How this package computes the published rows about what fish need of a tank. */
public final class TankOxygenChecks {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double HOUR_S = 3600;
    private static final double WARM_K = 25 + Air.ZERO_CELSIUS_K;

    private TankOxygenChecks() {}

    /** Levels below which fish suffer, and the balance without air. */
    public static CheckGroup tanks() {
        return CheckGroup.of(
                        "Oxygen of a tank",
                        "The integrator meets the closed form of the linear balance in `CoursesTest`.",
                        "oxygen-tank.json")
                .by("critical", in -> criticalKPa())
                .by("fall-without-air", TankOxygenChecks::fallMgPerLH)
                .by(
                        "danger",
                        in -> 1000 * CATALOGUE.assumed(Assumable.DANGER_OXYGEN).si());
    }

    /** Of the likely balance of a tank at 25 °C. */
    private static double criticalKPa() {
        Tank tank = Rooms.aTank("t").temperatureK(WARM_K).fish(1, 0.001).build();
        double critical = new Balances(Rooms.small(), CATALOGUE)
                .of(tank, Case.LIKELY)
                .orElseThrow()
                .criticalGPerM3();
        return critical / DissolvedOxygen.atPartialPressureGPerM3(new Water(WARM_K, 0), 1000);
    }

    private static double fallMgPerLH(Inputs in) {
        double gPerS = in.number("use_mg_per_kg_h") * in.number("biomass_kg_per_m3") / 1000 / HOUR_S;
        Balance balance = new Balance(1, 1, 8, 8, gPerS, 0, 1, 0, 0);
        return -balance.rate(6, Breath.NONE) * HOUR_S;
    }
}
