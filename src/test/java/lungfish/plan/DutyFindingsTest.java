package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.TankBuilder;
import org.junit.jupiter.api.Test;

/** What the plan says of blowers that are set wrongly, or of one among several. */
final class DutyFindingsTest {
    private static final PartId SMALL = new PartId(PartId.Kind.BLOWER, "small");

    /** Forty outlets of 2 L/min along a thin main of 8 m, and these blowers. */
    private static Room room(BlowerBuilder... blowers) {
        TankBuilder tank = aTank("A-1");
        for (int i = 0; i < 40; i++) {
            tank.with(anOutlet("a" + i).targetM3PerS(2e-3 / 60).onRun("main", 0.1 + 0.19 * i));
        }
        RoomBuilder room = aRoom().with(aRack("A").shelf(0.9, tank))
                .with(aMain("main", false, new Point(0, 0, 2), new Point(8, 0, 2)));
        for (BlowerBuilder blower : blowers) {
            room.with(blower);
        }
        return room.build();
    }

    private static List<Finding> findings(Code code, Room room) {
        return new Planner(DemoPlans.CATALOGUE)
                .plan(room).findings().stream()
                        .filter(finding -> finding.code() == code)
                        .toList();
    }

    @Test
    void aBleedBelowWhatTheRoomNeedsBlocksThePlan() {
        Blower.Bleed low = new Blower.BledTo(OptionalDouble.of(1000));
        // a quarter of a metre of water alone is 2.4 kPa
        List<Finding> found = findings(
                Code.BLED_BELOW_NEED,
                room(aBlower("big").machine("linear-piston-200").bleed(low).feeds("main", 0)));

        assertThat(found).hasSize(1);
        assertThat(found.get(0).amounts().get(0).si()).isEqualTo(1000);
    }

    @Test
    void aBleedAboveWhatTheRoomNeedsIsSound() {
        Blower.Bleed high = new Blower.BledTo(OptionalDouble.of(12_000));

        assertThat(findings(
                        Code.BLED_BELOW_NEED,
                        room(aBlower("big")
                                .machine("linear-piston-200")
                                .bleed(high)
                                .feeds("main", 0))))
                .isEmpty();
    }

    @Test
    void aSmallMachineAtOneEndCannotGiveItsHalf() {
        Room uneven = room(
                aBlower("small").machine("linear-piston-30").feeds("main", 0),
                aBlower("big").machine("linear-piston-200").feeds("main", 8));

        assertThat(findings(Code.SHARE_SHORT, uneven))
                .extracting(Finding::where)
                .containsExactly(SMALL);
    }

    @Test
    void equalMachinesAtBothEndsGiveTheirHalves() {
        Room even = room(
                aBlower("small").machine("linear-piston-100").feeds("main", 0),
                aBlower("big").machine("linear-piston-100").feeds("main", 8));

        assertThat(findings(Code.SHARE_SHORT, even)).isEmpty();
    }

    @Test
    void theVaneMachineAmongOthersIsTheOneThatWantsAReliefValve() {
        Room mixed = room(
                aBlower("big").machine("linear-piston-200").feeds("main", 8),
                aBlower("small").machine("rotary-vane-60").feeds("main", 0));

        assertThat(findings(Code.NEEDS_RELIEF_VALVE, mixed))
                .extracting(Finding::where)
                .containsExactly(SMALL);
    }

    /** The catalogue rates this class for 43.8 kPa all day; a quarter of a metre of water takes some 3 kPa. */
    private static Room vaneWithRelief(double opensPa) {
        Blower.Fittings fittings = new Blower.Fittings(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(opensPa));
        return room(aBlower("small").machine("rotary-vane-120").fitted(fittings).feeds("main", 0));
    }

    @Test
    void aReliefValveAboveTheContinuousPressureProtectsNothing() {
        assertThat(findings(Code.RELIEF_TOO_HIGH, vaneWithRelief(60_000)))
                .extracting(Finding::where)
                .containsExactly(SMALL);
        assertThat(findings(Code.RELIEF_TOO_HIGH, vaneWithRelief(40_000))).isEmpty();
    }

    @Test
    void aReliefValveBelowWhereItRunsLosesTheAir() {
        assertThat(findings(Code.RELIEF_OPENS, vaneWithRelief(2_000)))
                .extracting(Finding::where)
                .containsExactly(SMALL);
        assertThat(findings(Code.RELIEF_OPENS, vaneWithRelief(40_000))).isEmpty();
    }

    @Test
    void whereNothingFitsTheLimitIsSaid() {
        TankBuilder deep = aTank("A-1")
                .sized(1, 1, 7.5)
                .waterDepthM(7)
                .with(anOutlet("a").depthM(6.9).onRun("main", 1));
        Room well = aRoom().with(aRack("A").shelf(0.1, deep))
                .with(aMain("main", false, new Point(0, 0, 8), new Point(8, 0, 8)))
                .build();
        List<Finding> found = findings(Code.NO_BLOWER_FITS, well);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).words().get(0).text()).contains("stopped by ");
    }

    @Test
    void theMachineForOtherMainsIsNamed() {
        Room mixed = room(
                aBlower("big").machine("linear-piston-200").feeds("main", 8),
                aBlower("small").machine("linear-piston-30-120v").feeds("main", 0));

        assertThat(findings(Code.VOLTAGE_DIFFERS, mixed))
                .extracting(Finding::where)
                .containsExactly(SMALL);
    }
}
