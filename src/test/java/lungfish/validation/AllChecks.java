package lungfish.validation;

import java.util.List;
import lungfish.air.AirFlowChecks;
import lungfish.air.OxygenChecks;
import lungfish.air.UpliftChecks;
import lungfish.backup.BatteryChecks;
import lungfish.catalogue.CatalogueChecks;
import lungfish.network.FanChecks;
import lungfish.network.NetworkChecks;
import lungfish.noise.SoundChecks;
import lungfish.oxygen.TankOxygenChecks;
import lungfish.standing.AvailabilityChecks;

/** Every group, in the order of docs/validation.md. A new engine adds one line. */
final class AllChecks {
    private AllChecks() {}

    static List<CheckGroup> groups() {
        return List.of(
                AirFlowChecks.properties(),
                AirFlowChecks.friction(),
                AirFlowChecks.workedExamples(),
                AirFlowChecks.compressedAirTable(),
                AirFlowChecks.fuelGasTables(),
                AirFlowChecks.fittings(),
                NetworkChecks.networks(),
                FanChecks.operatingPoint(),
                AirFlowChecks.compression(),
                UpliftChecks.airlift(),
                UpliftChecks.outlets(),
                OxygenChecks.saturation(),
                OxygenChecks.balance(),
                TankOxygenChecks.tanks(),
                CatalogueChecks.tables(),
                SoundChecks.sound(),
                BatteryChecks.batteries(),
                AvailabilityChecks.availability());
    }
}
