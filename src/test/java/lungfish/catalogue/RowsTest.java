package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Assumable;
import org.junit.jupiter.api.Test;

/** One whole row of each file as it becomes a record; the practical figures are those of the file, the SI ones by hand. */
final class RowsTest {
    private static final double YEAR_S = 31_557_600; // 365.25 days

    private final Catalogue catalogue = CatalogueFiles.load();

    @Test
    void anAirlineHasItsMeasuresInMetres() {
        AirlineSize airline = catalogue.airline("airline-4-6").orElseThrow();
        assertThat(airline)
                .isEqualTo(
                        new AirlineSize("airline-4-6", "Airline 4/6 mm", 0.004, 0.006, 1.5e-6, 0.4, airline.source()));
    }

    @Test
    void aValveHasItsBoreAndCharacteristic() {
        ValveClass valve = catalogue.valve("gang-outlet").orElseThrow();
        assertThat(valve)
                .isEqualTo(new ValveClass(
                        "gang-outlet",
                        "Outlet of a gang valve",
                        0.0025,
                        6,
                        ValveClass.Characteristic.LINEAR,
                        10,
                        1.2,
                        valve.source()));
    }

    @Test
    void aPipeHasItsMeasuresAndTemperatures() {
        PipeSize pipe = catalogue.pipe("copper-22").orElseThrow();
        assertThat(pipe)
                .isEqualTo(new PipeSize(
                        "copper-22",
                        "Copper 22 × 1 mm",
                        "EN 1057",
                        PipeSize.Material.METAL,
                        0.022,
                        0.02,
                        0.001,
                        1.5e-6,
                        423.15,
                        473.15,
                        11,
                        pipe.source()));
    }

    @Test
    void aFittingKnowsWhetherItIsAValve() {
        FittingClass ball = catalogue.fitting("ball-valve").orElseThrow();
        assertThat(ball).isEqualTo(new FittingClass("ball-valve", "Ball valve", 0.05, true, 6, ball.source()));
        assertThat(catalogue.fitting("union").orElseThrow().valve()).isFalse();
    }

    /** 0.003 Pa at 1 L/min, so 0.003 · (6·10⁴)² = 1.08·10⁷ Pa s²/m⁶. */
    @Test
    void anAccessoryTakesPressureByTheSquareOfTheFlow() {
        AccessoryClass silencer = catalogue.accessory("inlet-silencer").orElseThrow();
        assertThat(silencer.kind()).isEqualTo(AccessoryClass.Kind.INLET_SILENCER);
        assertThat(silencer.lossFactorPaS2PerM6()).isCloseTo(1.08e7, within(1.0));
        assertThat(silencer.insertionLossDb()).isEqualTo(12);
    }

    @Test
    void aBatteryKindHasItsSharesTimesAndLimits() {
        BatteryClass battery = catalogue.battery("lifepo4").orElseThrow();
        assertThat(battery)
                .isEqualTo(new BatteryClass(
                        "lifepo4",
                        "Lithium iron phosphate",
                        BatteryClass.Chemistry.LITHIUM_IRON_PHOSPHATE,
                        12.8,
                        0.8,
                        1.05,
                        18_000,
                        0.8,
                        273.15,
                        0,
                        300 / 3.6e6,
                        12 * YEAR_S,
                        battery.source()));
        assertThat(catalogue.battery("lead-sealed").orElseThrow().coldestChargeK())
                .isZero();
    }

    @Test
    void aDeviceHasItsResistancesFlowsAndUplift() {
        DeviceClass sponge = catalogue.device("sponge-medium").orElseThrow();
        assertThat(sponge.clean().p0Pa()).isEqualTo(40);
        assertThat(sponge.clean().aPaSPerM3()).isCloseTo(30 * 60e3, within(1e-6));
        assertThat(sponge.due().bPaS2PerM6()).isCloseTo(10 * 3.6e9, within(1.0));
        assertThat(sponge.uplift()).isEqualTo(Optional.of(new DeviceClass.Uplift(0.019, 4)));
        assertThat(catalogue.device("stone-ordinary").orElseThrow().uplift()).isEmpty();
    }

    @Test
    void aBlowerHasItsCurveRatingAndIntervals() {
        BlowerClass piston = catalogue.blower("linear-piston-80").orElseThrow();
        assertThat(piston.openM3PerS() * 60e3).isCloseTo(116, within(1e-9));
        assertThat(piston.points().get(1)).isEqualTo(new BlowerClass.CurvePoint(4950, 107.9 / 60e3, 62.5));
        assertThat(piston.continuousPa()).isEqualTo(21_000);
        assertThat(piston.portM()).isEqualTo(0.018);
        assertThat(piston.price()).isEqualTo(335);
        assertThat(piston.rebuildS()).isEqualTo(4 * YEAR_S);
        assertThat(piston.lifeS()).isEqualTo(12 * YEAR_S);
        assertThat(piston.tiredShare()).isEqualTo(0.8);
        assertThat(piston.voltageV()).isEqualTo(OptionalDouble.of(230));
        assertThat(piston.frequencyHz()).isEqualTo(OptionalDouble.of(50));
    }

    @Test
    void smallPumpsAreNoCandidatesForAWholeRoom() {
        assertThat(catalogue.blowers().stream().filter(each -> each.kind().isPump()))
                .allMatch(each -> each.id().startsWith("small-"))
                .hasSize(18);
    }

    /** 2.5 L/min is 2.5/60000 m³/s. */
    @Test
    void aBatteryPumpHasItsAirItsTimeAndItsPrice() {
        BackupClass pump = catalogue.backupGear("battery-pump-medium").orElseThrow();
        assertThat(pump)
                .isEqualTo(new BackupClass(
                        "battery-pump-medium",
                        "Battery pump, two outlets",
                        BackupClass.Kind.BATTERY_PUMP,
                        2.5 / 60e3,
                        4000,
                        12 * 3600,
                        2.5,
                        0,
                        35,
                        4 * YEAR_S,
                        pump.source()));
    }

    /** A kind without what makes it one would be of no use to a plan. */
    @Test
    void everyKindOfBackupGearHasWhatMakesItOne() {
        for (BackupClass.Kind kind : BackupClass.Kind.values()) {
            assertThat(catalogue.backupGear(kind)).as("%s", kind).hasSizeGreaterThan(1);
        }
        assertThat(catalogue.backupGear(BackupClass.Kind.BATTERY_PUMP))
                .allMatch(each -> each.ratedM3PerS() > 0 && each.ratedPa() > 0 && each.runtimeS() > 0);
        assertThat(catalogue.backupGear(BackupClass.Kind.GENERATOR)).allMatch(each -> each.runtimeS() > 0);
        assertThat(catalogue.backupGear().stream()
                        .filter(each -> each.kind() != BackupClass.Kind.SHED_VALVE
                                && each.kind() != BackupClass.Kind.ALARM
                                && each.kind() != BackupClass.Kind.BATTERY_PUMP))
                .allMatch(each -> each.surgeW() >= each.ratedW() && each.ratedW() > 0);
    }

    @Test
    void oxygenIsAssumedInKilogramsACubicMetre() {
        assertThat(catalogue.assumed(Assumable.ALARM_OXYGEN).si()).isEqualTo(0.003); // 3 mg/L
    }

    @Test
    void theIdsOfAListCanBeNamed() {
        assertThat(Catalogue.ids(catalogue.batteries(), BatteryClass::id))
                .containsExactly("lead-flooded", "lead-sealed", "lifepo4");
        assertThat(catalogue.valve("no such")).isEmpty();
    }
}
