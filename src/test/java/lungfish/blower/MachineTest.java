package lungfish.blower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.FreeAir;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.network.Curve;
import lungfish.reason.PartId;
import org.junit.jupiter.api.Test;

/** A machine whose curve is a straight line: 100 L/min open, nothing at 20 kPa; 40 W open, 60 W shut. */
public final class MachineTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final FreeAir SEA_LEVEL = FreeAir.at(0, 293.15);
    private static final double PASCAL = 1e-6;

    /** That class, of a kind. */
    public static BlowerClass straight(String id, BlowerClass.Kind kind) {
        return of(id, kind, 0, List.of(new CurvePoint(0, 100 * L_PER_MIN, 40), new CurvePoint(20_000, 0, 60)));
    }

    private static BlowerClass of(String id, BlowerClass.Kind kind, double leastShare, List<CurvePoint> points) {
        return new BlowerClass(
                id,
                id,
                kind,
                50 * L_PER_MIN,
                10_000,
                points,
                15_000,
                Optional.of(new BlowerClass.Level(42, 1)),
                0.018,
                100,
                200,
                30,
                1e8,
                3e8,
                0.8,
                leastShare,
                0.3,
                1.5,
                OptionalDouble.of(230),
                OptionalDouble.of(50),
                "made up for a test");
    }

    private static Machine machine(BlowerClass.Kind kind, AccessoryClass... fitted) {
        return new Machine(
                "m",
                PartId.ROOM,
                straight("straight", kind),
                1,
                new Accessories(List.of(fitted)),
                OptionalDouble.empty());
    }

    private static AccessoryClass accessory(AccessoryClass.Kind kind, double pascalAt100LPerMin) {
        double full = 100 * L_PER_MIN;
        return new AccessoryClass("x", "x", kind, pascalAt100LPerMin / (full * full), 10, 5, "made up for a test");
    }

    @Test
    void aTiredMachineMovesItsTiredShareAtEveryPressure() {
        Machine machine = machine(BlowerClass.Kind.LINEAR_PISTON);

        Curve tired = machine.curve(Wear.TIRED, SEA_LEVEL);

        assertThat(tired.flowAt(10_000)).isEqualTo(0.8 * 50 * L_PER_MIN, within(1e-12));
    }

    @Test
    void aSideChannelMakesPressureInProportionToTheDensityOfItsAir() {
        FreeAir mountain = new FreeAir(0.8 * 101_325, 293.15);

        Curve curve = machine(BlowerClass.Kind.SIDE_CHANNEL).curve(Wear.NEW, mountain);

        assertThat(curve.shutGaugePa()).isEqualTo(0.8 * 20_000, within(PASCAL));
    }

    @Test
    void aPistonPushesAsHardOnAMountain() {
        FreeAir mountain = new FreeAir(0.8 * 101_325, 293.15);

        assertThat(machine(BlowerClass.Kind.LINEAR_PISTON)
                        .curve(Wear.NEW, mountain)
                        .flowAt(10_000))
                .isEqualTo(50 * L_PER_MIN, within(1e-12));
    }

    @Test
    void aSilencerTakesItsLossOffThePressure() {
        Machine silenced = machine(BlowerClass.Kind.LINEAR_PISTON, accessory(AccessoryClass.Kind.OUTLET_SILENCER, 400));

        // at 50 L/min, half of 100, it takes a quarter of 400 Pa: what stood at 10 000 Pa stands at 9 900
        assertThat(silenced.curve(Wear.NEW, SEA_LEVEL).pressureAt(50 * L_PER_MIN))
                .isEqualTo(9_900, within(1.0));
    }

    @Test
    void anInletFilterAlsoThinsTheAirThatIsDrawn() {
        Machine filtered = machine(BlowerClass.Kind.LINEAR_PISTON, accessory(AccessoryClass.Kind.INLET_FILTER, 400));

        // bare: 100 L/min (1 − p/20 kPa). At 9 900 Pa outlet and 100 Pa inlet loss the machine works against 10 000 Pa:
        // 50 L/min of air that is thinner by 100/101 325
        assertThat(filtered.curve(Wear.NEW, SEA_LEVEL).flowAt(9_900))
                .isEqualTo(50 * L_PER_MIN * (1 - 100 / 101_325.0), within(50 * L_PER_MIN * 1e-4));
    }

    @Test
    void behindAFilterTheCurveStillBeginsAtTheOpenEnd() {
        Machine filtered = machine(BlowerClass.Kind.LINEAR_PISTON, accessory(AccessoryClass.Kind.INLET_FILTER, 400));

        assertThat(filtered.curve(Wear.NEW, SEA_LEVEL).points().get(0).gaugePa())
                .isEqualTo(0, within(PASCAL));
    }

    @Test
    void aFilterThatTakesTheWholeCurveLeavesNothing() {
        BlowerClass fan = new BlowerClass(
                "fan",
                "fan",
                BlowerClass.Kind.SIDE_CHANNEL,
                90 * L_PER_MIN,
                1_000,
                List.of(new CurvePoint(0, 100 * L_PER_MIN, 40), new CurvePoint(2_000, 80 * L_PER_MIN, 60)),
                2_000,
                Optional.empty(),
                0.018,
                100,
                200,
                30,
                1e8,
                3e8,
                0.8,
                0,
                0.3,
                1.5,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "made up for a test");
        // at 80 L/min the filter takes 0.64 × 50 kPa = 32 kPa of the 2 kPa that the machine makes there
        Machine choked = new Machine(
                "m",
                PartId.ROOM,
                fan,
                1,
                new Accessories(List.of(accessory(AccessoryClass.Kind.INLET_FILTER, 50_000))),
                OptionalDouble.empty());

        assertThat(choked.curve(Wear.NEW, SEA_LEVEL).flowAt(0)).isZero();
    }

    @Test
    void warmIntakeAirIsLessFreeAirOfTheRoom() {
        Machine attic = new Machine(
                "m",
                PartId.ROOM,
                straight("straight", BlowerClass.Kind.LINEAR_PISTON),
                1,
                Accessories.NONE,
                OptionalDouble.of(313.15));

        assertThat(attic.curve(Wear.NEW, SEA_LEVEL).flowAt(0))
                .isEqualTo(100 * L_PER_MIN * 293.15 / 313.15, within(1e-12));
    }

    @Test
    void wattsGoStraightBetweenThePoints() {
        Machine machine = machine(BlowerClass.Kind.LINEAR_PISTON);

        assertThat(machine.watts(5_000, 75 * L_PER_MIN, SEA_LEVEL)).isEqualTo(45, within(1e-9));
    }

    /** 40, 50 and 90 W at 4, 12 and 20 kPa: in the middle of the upper stretch 70 W, beyond the ends the end's own. */
    @Test
    void wattsAreThoseOfTheirStretchAndOfTheEndsBeyondThem() {
        BlowerClass bent = of(
                "bent",
                BlowerClass.Kind.LINEAR_PISTON,
                0,
                List.of(
                        new CurvePoint(4_000, 100 * L_PER_MIN, 40),
                        new CurvePoint(12_000, 60 * L_PER_MIN, 50),
                        new CurvePoint(20_000, 0, 90)));
        Machine machine = machine(BlowerClass.Kind.LINEAR_PISTON).as(bent);

        assertThat(machine.watts(16_000, 30 * L_PER_MIN, SEA_LEVEL)).isEqualTo(70, within(1e-9));
        assertThat(machine.watts(1_000, 100 * L_PER_MIN, SEA_LEVEL)).isEqualTo(40);
        assertThat(machine.watts(30_000, 0, SEA_LEVEL)).isEqualTo(90);
    }

    /** In 0.8 of the air 8 kPa stand where 10 kPa stood, 50 W there, and take 0.8 of the power: 40 W. */
    @Test
    void aSideChannelTakesPowerInProportionToTheDensityOfItsAir() {
        FreeAir mountain = new FreeAir(0.8 * 101_325, 293.15);

        assertThat(machine(BlowerClass.Kind.SIDE_CHANNEL).watts(8_000, 50 * L_PER_MIN, mountain))
                .isEqualTo(40, within(1e-9));
    }

    /** Two share 100 L/min: 50 L/min each, at which a silencer of 400 Pa at 100 L/min takes 100 Pa. */
    @Test
    void behindASilencerEachOfTwoMachinesMakesMoreThanTheyGive() {
        Machine two = machine(BlowerClass.Kind.LINEAR_PISTON, accessory(AccessoryClass.Kind.OUTLET_SILENCER, 400))
                .withCount(2);

        assertThat(two.machinePa(10_000, 100 * L_PER_MIN)).isEqualTo(10_100, within(PASCAL));
    }

    /** Three of 100 L/min open, of each of which 0.4 must pass: 120 L/min. */
    @Test
    void machinesThatMayNotBeThrottledLetTheirSharePass() {
        BlowerClass never = of(
                "never",
                BlowerClass.Kind.SIDE_CHANNEL,
                0.4,
                List.of(new CurvePoint(0, 100 * L_PER_MIN, 40), new CurvePoint(20_000, 0, 60)));

        assertThat(machine(BlowerClass.Kind.SIDE_CHANNEL).as(never).withCount(3).leastM3PerS())
                .isEqualTo(120 * L_PER_MIN, within(1e-12));
    }

    /** A filter of 400 Pa and a silencer of 100 Pa at 100 L/min; clogged, the filter alone takes four times as much. */
    @Test
    void aFilterClogsAndASilencerDoesNot() {
        AccessoryClass silencer = accessory(AccessoryClass.Kind.OUTLET_SILENCER, 100);
        Accessories both = new Accessories(List.of(accessory(AccessoryClass.Kind.INLET_FILTER, 400), silencer));

        assertThat(both.lossPa(100 * L_PER_MIN)).isEqualTo(500, within(PASCAL));
        assertThat(both.clogged().lossPa(100 * L_PER_MIN)).isEqualTo(1_700, within(PASCAL));
        assertThat(both.isFiltered()).isTrue();
        assertThat(new Accessories(List.of(silencer)).isFiltered()).isFalse();
        assertThat(both.price()).isEqualTo(10); // 5 each
    }

    @Test
    void theCoolEndIsAdiabaticAndTheHotEndKeepsEveryWatt() {
        Machine machine = machine(BlowerClass.Kind.LINEAR_PISTON);

        Discharge discharge = Discharge.at(machine, 10_000, 50 * L_PER_MIN, 50, SEA_LEVEL);

        // reference page on air flow, §7: a rise of 8.0 K at 10 kPa from 20 °C at sea level
        assertThat(discharge.coolK() - 293.15).isEqualTo(8.0, within(0.1));
        // 50 W into 50 L/min × 1.2041 kg/m³ = 1.0034e-3 kg/s of 1005 J/(kg K): 49.6 K
        assertThat(discharge.hotK() - 293.15).isEqualTo(49.6, within(0.1));
    }
}
