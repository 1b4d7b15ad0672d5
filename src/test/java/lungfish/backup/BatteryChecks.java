package lungfish.backup;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.room.Backup.Battery;
import lungfish.room.BatteryId;
import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** How this package computes the published rows about batteries. */
public final class BatteryChecks {
    private static final double HOUR_S = 3600;
    private static final double ZERO_CELSIUS_K = 273.15;

    private BatteryChecks() {}

    /** Peukert, temperature, age, runtime, charging. */
    public static CheckGroup batteries() {
        return CheckGroup.of(
                        "Batteries", "Peukert with the rated time in it; IEEE Std 485; IEC 62485-2.", "battery.json")
                .by("peukert", BatteryChecks::peukertH)
                .by(
                        "lead-acid-warmth",
                        in -> Warmth.leadAcidSizeFactor(Measures.fahrenheitK(in.number("electrolyte_temperature_F"))))
                .by(
                        "iron-phosphate-warmth",
                        in -> Warmth.ironPhosphateShare(in.number("temperature_C") + ZERO_CELSIUS_K))
                .by("ageing", in -> 1 / kind("lead-sealed").endOfLifeShare())
                .by("iron-phosphate-runtime", BatteryChecks::runtimeH)
                .by(
                        "charging-air",
                        in -> ChargingAir.m3PerHour(
                                in.number("cells"), in.number("Igas_mA_per_Ah"), in.number("capacity_Ah")));
    }

    private static double peukertH(Inputs in) {
        double chargeC = in.number("capacity_Ah") * HOUR_S;
        double ratedS = in.number("rating_h") * HOUR_S;
        return Peukert.timeS(chargeC, ratedS, in.number("current_A"), in.number("k")) / HOUR_S;
    }

    private static double runtimeH(Inputs in) {
        Battery battery = new Battery(
                new BatteryId("checked"),
                "lifepo4",
                1,
                in.number("V"),
                in.number("Ah") * HOUR_S,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        Store store = new Store(battery, kind("lifepo4"), typed(25 + ZERO_CELSIUS_K), typed(1));
        Inverting inverting = new Inverting(typed(in.number("efficiency")), typed(in.number("idle_W")));
        return new Bank(List.of(store), inverting).runtimeS(in.number("load_W")) / HOUR_S;
    }

    private static BatteryClass kind(String id) {
        return CatalogueFiles.load().battery(id).orElseThrow();
    }

    private static Given typed(double si) {
        return new Given(si, Origin.typed(""));
    }
}
