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
import java.util.Optional;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Severity;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.TankBuilder;
import lungfish.siphon.SiphonFindings;
import lungfish.siphon.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the plan says of water that could run when the air stops. Heights as in {@code SiphonsTest}: 1.50 and 0.60 m. */
final class SiphonFindingsTest {
    private static final String CHECK = DemoPlans.CATALOGUE.checkValves().get(0).id();
    private static final List<Code> WATER =
            List.of(Code.SIPHON_BY_ITSELF, Code.SIPHON, Code.BELOW_WATER_LINE, Code.CHECK_VALVE_UNKNOWN);
    private static final double ROUNDING = 1e-9;

    private static RoomBuilder room(double pipeM, OutletBuilder high, OutletBuilder low) {
        return aRoom().with(aRack("A")
                        .shelf(0.3, aTank("low").with(low))
                        .shelf(1.2, aTank("high").with(high)))
                .with(aMain("main", false, new Point(0.2, 0.2, pipeM), new Point(4, 0.2, pipeM)));
    }

    private static List<Finding> water(Room room) {
        return water(new Planner(DemoPlans.CATALOGUE).plan(room));
    }

    private static List<Finding> water(Plan plan) {
        return plan.findings().stream()
                .filter(finding -> WATER.contains(finding.code()))
                .toList();
    }

    private static double amount(Finding finding, String name) {
        return finding.amounts().stream()
                .filter(amount -> amount.name().equals(name))
                .findFirst()
                .map(Amount::si)
                .orElseThrow();
    }

    @Test
    void waterThatRunsByItselfIsWorthMending() {
        RoomBuilder room =
                room(1.2, anOutlet("h").checkValve("none"), anOutlet("l").checkValve("none"));
        List<Finding> said = water(room.with(aBlower("b").at(0.2, 0.2, 1.6)).build());

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON_BY_ITSELF);
        assertThat(said.get(0).severity()).isEqualTo(Severity.WARNING);
        assertThat(said.get(0).where().id())
                .as("where the check valve is missing")
                .isEqualTo("h");
        assertThat(amount(said.get(0), "water")).isEqualTo(0.045, within(ROUNDING));
        assertThat(amount(said.get(0), "free")).isEqualTo(0.0108, within(ROUNDING));
        assertThat(amount(said.get(0), "valves")).isEqualTo(1);
    }

    @Test
    void waterThatMustBeLiftedIsACaution() {
        RoomBuilder room =
                room(2.2, anOutlet("h").checkValve("none"), anOutlet("l").checkValve("none"));
        List<Finding> said = water(room.with(aBlower("b").at(0.2, 0.2, 2.1)).build());

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON);
        assertThat(said.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(amount(said.get(0), "lift")).isEqualTo(0.7, within(ROUNDING));
    }

    @Test
    void nothingIsSaidWhereEveryOutletHasACheckValve() {
        RoomBuilder room =
                room(1.2, anOutlet("h").checkValve(CHECK), anOutlet("l").checkValve(CHECK));

        assertThat(water(room.with(aBlower("b").at(0.2, 0.2, 0.2)).build())).isEmpty();
    }

    @Test
    void aBlowerBelowOpenWaterIsACautionOfItsOwn() {
        RoomBuilder room =
                room(1.2, anOutlet("h").checkValve("none"), anOutlet("l").checkValve(CHECK));
        List<Finding> said = water(room.with(aBlower("b").at(0.2, 0.2, 0.2)).build());

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON_BY_ITSELF, Code.BELOW_WATER_LINE);
        assertThat(said.get(1).where().id()).isEqualTo("b");
    }

    @Test
    void aCheckValveOfWhichNothingIsSaidIsAskedFor() {
        RoomBuilder room = room(2.2, anOutlet("h"), anOutlet("l"));
        List<Finding> said = water(room.with(aBlower("b").at(0.2, 0.2, 2.1)).build());

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON, Code.CHECK_VALVE_UNKNOWN);
        assertThat(amount(said.get(1), "found"))
                .as("only the upper one can lose water")
                .isEqualTo(1);
    }

    /** 40 outlets that lose water, and 40 that could get it. */
    @Test
    void aRoomOfManyOutletsGetsOneSentenceOfEachKind() {
        TankBuilder low = aTank("low");
        TankBuilder high = aTank("high");
        for (int i = 0; i < 40; i++) {
            low.with(anOutlet("l" + i).checkValve("none"));
            high.with(anOutlet("h" + i).checkValve("none"));
        }
        Room room = aRoom().with(aRack("A").shelf(0.3, low).shelf(1.2, high))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("b").at(0.2, 0.2, 2.1))
                .build();
        List<Finding> said = water(room);

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON);
        assertThat(amount(said.get(0), "reached")).isEqualTo(40);
        assertThat(amount(said.get(0), "valves")).isEqualTo(40);
    }

    /**
     * The garage by hand: no check valve at one outlet of A's middle shelf (line 1.16 m) and three of C's upper one (1.43 to
     * 1.31 m), nothing said of four on B's top shelf (1.50 + 0.20 m): 8. The pipe lies at 2.2 m and the lowest gang above
     * water at 1.65 m: no water runs by itself. Least must be lifted that of a cone on the hatchery's gang, at 1.15 + 0.28 =
     * 1.43 m, into the tumbler beside it: 0.22 m. Below the line of B's top shelf stand A low and middle (4 + 4), B low and
     * middle (2 + 4), C low and upper (4 + 4): 22. The blower, at 1.9 m, stands above all water.
     */
    @Test
    void theGarageIsJudgedAsCountedByHand() {
        List<Finding> said = water(DemoPlans.plan("garage-killifish"));

        assertThat(said).extracting(Finding::code).containsExactly(Code.SIPHON, Code.CHECK_VALVE_UNKNOWN);
        assertThat(said.get(0).where().id()).isEqualTo("C-2-1-a");
        assertThat(amount(said.get(0), "lift")).isEqualTo(0.22, within(ROUNDING));
        assertThat(amount(said.get(0), "reached")).isEqualTo(22);
        assertThat(amount(said.get(0), "valves")).isEqualTo(8);
        assertThat(amount(said.get(1), "found")).isEqualTo(4);
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void aFindingLeadsToItsWay(String name) {
        Plan plan = DemoPlans.plan(name);
        for (Finding finding : plan.findings()) {
            boolean isOfAWay = WATER.contains(finding.code()) && finding.code() != Code.CHECK_VALVE_UNKNOWN;
            Optional<Way> way = SiphonFindings.way(finding, plan.siphons());
            assertThat(way.isPresent()).isEqualTo(isOfAWay);
            way.ifPresent(
                    there -> assertThat(plan.siphons().path(there).points()).hasSizeGreaterThan(3));
        }
    }
}
