package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.BlowerBuilder;
import lungfish.room.Climate;
import lungfish.room.Point;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import org.junit.jupiter.api.Test;

/**
 * Air of 22 °C at 60 % has its dew point at 13.9 °C; of 35 °C at 60 %, at 26.0 °C (psychrometric tables, from memory). Over
 * the pressure that a pipe needs here the points lie under 2 K higher.
 */
final class CondensationTest {
    private static final double ZERO_K = 273.15;

    /** The rise with 5 to 10 kPa in the pipe: one in ten of the vapour's pressure is about 1.6 K. */
    private static final double PRESSED_K = 2;

    private static final Climate AIR = new Climate(
            OptionalDouble.of(ZERO_K + 22), OptionalDouble.of(0.6), OptionalDouble.of(0), OptionalDouble.empty());

    private static Run run(String id, double heightM, OptionalDouble surroundingsK) {
        return aMain(id, false, new Point(0.2, 0.2, heightM), new Point(4, 0.2, heightM + 0.3))
                .surroundedBy(surroundingsK);
    }

    private static RoomBuilder room() {
        return aRoom().with(AIR).with(aRack("A").shelf(0.9, aTank("t").with(anOutlet("o"))));
    }

    private static List<Finding> damp(RoomBuilder room) {
        return new Planner(DemoPlans.CATALOGUE)
                .plan(room.build()).findings().stream()
                        .filter(finding ->
                                finding.code() == Code.CONDENSATION || finding.code() == Code.CONDENSATION_IN_HOSE)
                        .toList();
    }

    private static double amount(Finding finding, String name) {
        return finding.amounts().stream()
                .filter(amount -> amount.name().equals(name))
                .findFirst()
                .map(Amount::si)
                .orElseThrow();
    }

    private static BlowerBuilder inTheRoom() {
        return aBlower("b").at(0.2, 0.2, 2.1);
    }

    @Test
    void aRunInAColdPlaceIsNamedWithItsDewPointAndItsLowPoint() {
        Run cold = aMain("cold", false, new Point(4, 0.2, 2.3), new Point(5, 0.2, 1.8));
        List<Finding> said = damp(room().with(run("warm", 2.0, OptionalDouble.empty()))
                .with(cold.surroundedBy(OptionalDouble.of(ZERO_K + 10)))
                .with(inTheRoom()));

        assertThat(said).hasSize(1);
        assertThat(said.get(0).where().id()).isEqualTo("cold");
        assertThat(amount(said.get(0), "found")).isEqualTo(ZERO_K + 10);
        assertThat(amount(said.get(0), "allowed")).isBetween(ZERO_K + 13.9, ZERO_K + 13.9 + PRESSED_K);
        assertThat(amount(said.get(0), "low")).isEqualTo(1.8, within(1e-9));
    }

    @Test
    void aRunWarmerThanTheDewPointStaysDry() {
        assertThat(damp(room().with(run("attic", 2.0, OptionalDouble.of(ZERO_K + 18)))
                        .with(inTheRoom())))
                .isEmpty();
    }

    @Test
    void aBlowerInAHotAtticBringsItsDampIntoTheCoolerPipe() {
        List<Finding> said = damp(room().with(run("main", 2.0, OptionalDouble.of(ZERO_K + 22)))
                .with(inTheRoom().outside().intakeK(ZERO_K + 35)));

        assertThat(said).extracting(Finding::code).containsExactly(Code.CONDENSATION);
        assertThat(amount(said.get(0), "allowed")).isBetween(ZERO_K + 26, ZERO_K + 26 + PRESSED_K);
    }

    /** Air drawn at 8 °C holds at most what settles at 8 °C again, though the room's settles at 13.9 °C. */
    @Test
    void aBlowerInAColdClosetDrawsNoMoreThanSaturatedAir() {
        List<Finding> said = damp(room().with(run("main", 2.0, OptionalDouble.of(ZERO_K + 12)))
                .with(inTheRoom().outside().intakeK(ZERO_K + 8)));

        assertThat(said).extracting(Finding::code).containsExactly(Code.CONDENSATION_IN_HOSE);
        assertThat(said.get(0).where().id()).isEqualTo("b");
        assertThat(amount(said.get(0), "allowed")).isBetween(ZERO_K + 8, ZERO_K + 8 + PRESSED_K);
    }

    @Test
    void theColdestPlaceOfTheRoomIsThatOfTheMainOfWhichNothingIsSaid() {
        Climate cold = AIR.withColdestPipeK(OptionalDouble.of(ZERO_K + 5));
        List<Finding> said = damp(room().with(run("said", 2.0, OptionalDouble.of(ZERO_K + 20)))
                .with(run("unsaid", 2.0, OptionalDouble.empty()))
                .with(inTheRoom())
                .with(cold));

        assertThat(said).extracting(finding -> finding.where().id()).containsExactly("unsaid");
    }
}
