package lungfish.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import lungfish.build.PartsList.Group;
import lungfish.build.PartsList.Line;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Building;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The parts of each demo room, counted by hand from its file. */
final class BuildPlanTest {
    private static final double MILLIMETRE = 1e-3;
    private static final Map<String, BuildPlan> PLANS = new HashMap<>();

    private static BuildPlan build(String room) {
        return PLANS.computeIfAbsent(room, name -> BuildPlan.of(DemoPlans.plan(name), DemoPlans.CATALOGUE));
    }

    private static double counted(BuildPlan build, String key) {
        return build.parts().line(key).map(Line::counted).orElse(0.0);
    }

    private static double bought(BuildPlan build, String key) {
        return build.parts().line(key).map(Line::buy).orElse(0.0);
    }

    private static Cutting cutting(BuildPlan build, String size) {
        return Objects.requireNonNull(build.cuts().get(size));
    }

    /** Fittings in all, each kind and size once: nothing else is counted. */
    private static Map<String, Double> fittings(BuildPlan build) {
        Map<String, Double> all = new HashMap<>();
        build.parts().of(Group.FITTINGS).forEach(line -> all.put(line.key(), line.counted()));
        return all;
    }

    /**
     * One straight run of 1.55 m, from the blower's hose to a cap that is drawn at its end. 7 outlets, each with a tap of its
     * own. The wall of 20 mm PN 16 is 1.5 mm, and a G 1/8 thread wants four turns of 25.4 / 28 = 0.907 mm: saddles. A tenth to
     * spare of 7 is 1. Clips: 1.55 / 0.85 = 1.8, so 2. The blower stands over the end of the run: hose 1 m as assumed.
     */
    @Test
    void startingOut() {
        BuildPlan build = build("starting-out");
        assertThat(fittings(build)).isEqualTo(Map.of("cap/pvc-u-20-pn16", 1.0));
        assertThat(counted(build, "pvc-u-20-pn16")).isEqualTo(1.55, within(MILLIMETRE));
        assertThat(bought(build, "pvc-u-20-pn16")).isEqualTo(5);
        assertThat(counted(build, "tap-barb/g-1-8")).isEqualTo(7);
        assertThat(bought(build, "saddle/pvc-u-20-pn16/g-1-8")).isEqualTo(8);
        assertThat(counted(build, "clip/pvc-u-20-pn16")).isEqualTo(2);
        assertThat(counted(build, "hose")).isEqualTo(1);
        assertThat(counted(build, "drain-valve")).isEqualTo(1);
    }

    /**
     * The loop is 4.05 + 2.85 + 4.05 + 2.85 = 13.8 m. The riser comes straight on to its corner at (4.2, 0.2), so a tee turns
     * the pipe there and three elbows are left; 2 unions, 2 ball valves. The riser, 0.25 + 0.5 m of copper, has an elbow and a
     * union. Take-offs of the 25 mm pipe: elbows 3 × 2 × 13.5, tee 2 × 13.5, unions 2 × 2 × 8.75, valves 2 × 2 × 22.5 mm, in all
     * 233 mm: 13.567 m to cut, out of 3 lengths of 5 m. Of the copper: union 2 × 7.7, elbow 2 × 13.2, and 13.5 in the tee: 0.695 m.
     * 30 outlets: 4 on the string of tees, 3 on the gang valve, 23 taps of their own, so 25 holes. Clips: 4.05 / 0.9 makes 5,
     * 2.85 / 0.9 makes 4, twice each. A string for 4 has 3 tees.
     */
    @Test
    void garageKillifish() {
        BuildPlan build = build("garage-killifish");
        assertThat(fittings(build))
                .isEqualTo(Map.of(
                        "elbow-90/pvc-u-25-pn16", 3.0,
                        "tee-branch/pvc-u-25-pn16", 1.0,
                        "union/pvc-u-25-pn16", 2.0,
                        "ball-valve/pvc-u-25-pn16", 2.0,
                        "elbow-90/copper-22", 1.0,
                        "union/copper-22", 1.0,
                        "metal-adapter/pvc-u-25-pn16/copper-22", 1.0));
        assertThat(counted(build, "pvc-u-25-pn16")).isEqualTo(13.567, within(MILLIMETRE));
        assertThat(counted(build, "copper-22")).isEqualTo(0.695, within(MILLIMETRE));
        assertThat(cutting(build, "pvc-u-25-pn16").stocks()).hasSize(3);
        assertThat(counted(build, "tap-barb/g-1-8")).isEqualTo(25);
        assertThat(counted(build, "clip/pvc-u-25-pn16")).isEqualTo(18);
        assertThat(counted(build, "airline-tee")).isEqualTo(3);
    }

    /**
     * Loop of 4 corners, 2 unions, 2 ball valves. Onto it come, each in mid-leg with a tee: both ends of the middle run, the
     * riser, the closet branch: 4 tees, of which 2 want a bush to 1 in, one to 3/4 in, one an adapter to copper. Middle run: 1
     * union. Riser: 1 elbow, 1 ball valve, 1 union. Closet: 2 elbows, ball valve, swing check, cap. Outlets: 8 racks of 8 and 6
     * in quarantine, of which 3 hang on the gang valve: 67 taps and that of the gang, whose tubing of 1/4 in (6.35 mm) wants
     * the next thread. Clips of the loop: legs of 2.92 and 3.63 m, every 1.219 m: 3 each, four times.
     */
    @Test
    void basementRainbows() {
        BuildPlan build = build("basement-rainbows");
        Map<String, Double> fittings = fittings(build);
        assertThat(fittings)
                .containsEntry("elbow-90/pvc-sch40-1-1-4in", 4.0)
                .containsEntry("tee-branch/pvc-sch40-1-1-4in", 4.0)
                .containsEntry("union/pvc-sch40-1-1-4in", 2.0)
                .containsEntry("ball-valve/pvc-sch40-1-1-4in", 2.0)
                .containsEntry("bush/pvc-sch40-1-1-4in/pvc-sch40-1in", 2.0)
                .containsEntry("bush/pvc-sch40-1-1-4in/pvc-sch40-3-4in", 1.0)
                .containsEntry("metal-adapter/pvc-sch40-1-1-4in/copper-l-1-1-4in", 1.0)
                .containsEntry("union/pvc-sch40-1in", 1.0)
                .containsEntry("elbow-90/copper-l-1-1-4in", 1.0)
                .containsEntry("ball-valve/copper-l-1-1-4in", 1.0)
                .containsEntry("union/copper-l-1-1-4in", 1.0)
                .containsEntry("elbow-90/pvc-sch40-3-4in", 2.0)
                .containsEntry("ball-valve/pvc-sch40-3-4in", 1.0)
                .containsEntry("check-swing/pvc-sch40-3-4in", 1.0)
                .containsEntry("cap/pvc-sch40-3-4in", 1.0)
                .hasSize(15);
        assertThat(counted(build, "tap-barb/npt-1-8")).isEqualTo(67);
        assertThat(counted(build, "tap-barb/npt-1-4")).isEqualTo(1);
        assertThat(counted(build, "needle-brass") + counted(build, "gang-outlet"))
                .isEqualTo(70);
        assertThat(counted(build, "clip/pvc-sch40-1-1-4in")).isEqualTo(12);
    }

    /**
     * Two loops of 2 × (4.3 + 5.18) = 18.96 m. Each riser comes straight on to a corner (of the east loop: its first), so each
     * loop has 3 elbows and 4 tees: riser, both ends of its cross run, bridge. Unions 2 + 2 + 1 and valves 2 + 2 + 1 of 50 mm, 4
     * valves of 40 mm; each riser 2 elbows, a union, a valve. Drawn in 50 mm: 2 × 18.96 + 2.8 = 40.72 m; take-offs: elbows 6 ×
     * 52, tees 8 × 52 and 2 × 26 at the bridge, unions 5 × 35, valves 5 × 90 mm, in all 1.405 m. But each loop has a union drawn
     * 20 mm from an elbow: where 20 − 26 − 17.5 mm are left, two sockets of 31 mm want 62, so 85.5 mm more, twice: 39.486 m.
     * Two risers, two drains, four machines. 16 outlets a rack, 20 racks in place: 320, of which 8 on two gangs.
     */
    @Test
    void clubHall() {
        BuildPlan build = build("club-hall");
        assertThat(fittings(build))
                .isEqualTo(Map.of(
                        "elbow-90/pvc-u-50-pn10", 6.0,
                        "tee-branch/pvc-u-50-pn10", 8.0,
                        "union/pvc-u-50-pn10", 5.0,
                        "ball-valve/pvc-u-50-pn10", 5.0,
                        "ball-valve/pvc-u-40-pn10", 4.0,
                        "bush/pvc-u-50-pn10/pvc-u-40-pn10", 4.0,
                        "metal-adapter/pvc-u-50-pn10/copper-42", 2.0,
                        "elbow-90/copper-42", 4.0,
                        "union/copper-42", 2.0,
                        "ball-valve/copper-42", 2.0));
        assertThat(counted(build, "pvc-u-50-pn10")).isEqualTo(39.486, within(MILLIMETRE));
        assertThat(build.findings())
                .filteredOn(found -> found.code() == Code.PIECE_TOO_SHORT)
                .hasSize(2);
        assertThat(counted(build, "drain-valve")).isEqualTo(2);
        assertThat(counted(build, "blower-check")).isEqualTo(4);
        assertThat(counted(build, "linear-piston-150")).isEqualTo(4);
        assertThat(build.taps().stream().mapToInt(Tap::holes).sum()).isEqualTo(320 - 8 + 2);
    }

    /** The string of tees hangs at 9.2 m, the third corner is at 4.05 + 2.85 = 6.9 m, its elbow takes 13.5 mm off the pipe. */
    @Test
    void aTapIsMeasuredFromItsCornerAndFromThePieceItIsIn() {
        Tap fry = build("garage-killifish").taps().stream()
                .filter(tap ->
                        tap.gang().filter(gang -> gang.text().equals("fry")).isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(fry.corner()).isEqualTo(3);
        assertThat(fry.fromCornerM()).isEqualTo(2.3, within(1e-9));
        assertThat(fry.fromPieceM()).isEqualTo(2.2865, within(1e-9));
        assertThat(fry.holes()).isEqualTo(1);
    }

    /** Holes of one piece stand 5 cm apart at the least, and 2 cm off the sockets, but for the places told. */
    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void tapsKeepApartFromEachOther(String room) {
        List<Tap> taps = build(room).taps();
        for (int i = 1; i < taps.size(); i++) {
            Tap before = taps.get(i - 1);
            Tap tap = taps.get(i);
            if (before.run().equals(tap.run()) && before.piece() == tap.piece()) {
                double apartM = tap.fromPieceM() - before.fromPieceM();
                assertThat(apartM).isGreaterThan(0.05 * (before.holes() + tap.holes()) / 2 - 1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everyOutletIsTappedOnceAndSetOnce(String room) {
        Plan plan = DemoPlans.plan(room);
        BuildPlan build = build(room);
        List<String> all =
                plan.outlets().stream().map(each -> each.need().id().text()).toList();
        assertThat(build.taps().stream().flatMap(tap -> tap.outlets().stream()).map(id -> id.text()))
                .containsExactlyInAnyOrderElementsOf(all);
        assertThat(build.order()).extracting(turn -> turn.need().id().text()).containsExactlyInAnyOrderElementsOf(all);
    }

    /** Proportional balancing: the index outlet as the reference, then from the far end back to the source. */
    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void theWorstServedIsSetFirstThenFromTheFarEnd(String room) {
        List<SettingOrder.Turn> order = build(room).order();
        long index = order.stream().filter(SettingOrder.Turn::index).count();
        assertThat(order.subList(0, (int) index)).allMatch(SettingOrder.Turn::index);
        assertThat(order.subList((int) index, order.size()))
                .isSortedAccordingTo(Comparator.comparing(turn -> -turn.wayM()));
    }

    /** Hose 1 m, then 1.05 m of main, then the airline; the seat's airline is measured by the plan. */
    @Test
    void theWayOfTheAirGoesThroughHosePipeAndAirline() {
        Plan plan = DemoPlans.plan("starting-out");
        SettingOrder.Turn turn = build("starting-out").order().stream()
                .filter(each -> each.need().id().text().equals("A-1-2-a"))
                .findFirst()
                .orElseThrow();
        int at = plan.piped().orElseThrow().needs().indexOf(turn.need());
        double airlineM = plan.piped().orElseThrow().airlineM().get(at);
        assertThat(turn.wayM() - airlineM).isEqualTo(1 + 1.04, within(2 * MILLIMETRE));
    }

    /** Nobody buys what the small pumps feed already, and what nobody has a price for costs nothing known. */
    @Test
    void devicesOfTodayAreThere() {
        PartsList parts = build("garage-killifish").parts();
        Line boxes = parts.line("box-filter").orElseThrow();
        assertThat(boxes.there()).isEqualTo(6);
        assertThat(boxes.buy()).isZero();
        assertThat(boxes.cost()).isEmpty();
    }

    /** 3 elbows and 1 to spare at 2.50 each; other elbows at the price for all of their kind. */
    @Test
    void theKeepersOwnPricesCount() {
        Building own = Building.UNKNOWN
                .withPrice("elbow-90/pvc-u-25-pn16", OptionalDouble.of(2.5))
                .withPrice("elbow-90", OptionalDouble.of(7));
        PartsList parts = BuildPlan.of(planned(own), DemoPlans.CATALOGUE).parts();
        Line elbows = parts.line("elbow-90/pvc-u-25-pn16").orElseThrow();
        assertThat(elbows.ownPrice()).isTrue();
        assertThat(elbows.cost()).hasValue(10);
        assertThat(parts.line("elbow-90/copper-22").orElseThrow().price()).hasValue(7);
        assertThat(parts.line("union/copper-22").orElseThrow().ownPrice()).isFalse();
    }

    /** Half of 25 barbs is 12.5, so 13 to spare; a stock of 4.2 m takes the longest piece of 4.023 m alone. */
    @Test
    void stockAndSpareAreTakenAsSaid() {
        Building own = Building.UNKNOWN
                .withSpareShare(OptionalDouble.of(0.5))
                .withStockM(OptionalDouble.of(4.2))
                .withKerfM(OptionalDouble.of(0));
        BuildPlan build = BuildPlan.of(planned(own), DemoPlans.CATALOGUE);
        assertThat(bought(build, "tap-barb/g-1-8")).isEqualTo(38);
        assertThat(cutting(build, "pvc-u-25-pn16").stockM()).isEqualTo(4.2);
        assertThat(build.assumptions()).isEmpty();
    }

    private static Plan planned(Building building) {
        return new Planner(DemoPlans.CATALOGUE)
                .plan(DemoPlans.room("garage-killifish").withBuilding(building));
    }

    @Test
    void theTotalLeavesOutWhatIsBoughtLater() {
        PartsList parts = build("starting-out").parts();
        double all = parts.lines().stream()
                .mapToDouble(line -> line.cost().orElse(0))
                .sum();
        double kit = parts.line("rebuild-kit/linear-diaphragm-15")
                .orElseThrow()
                .cost()
                .orElseThrow();
        assertThat(parts.total()).isEqualTo(all - kit, within(1e-9));
    }

    @Test
    void aRoomWithoutPipeNeedsNoPipe() {
        Plan plan = new Planner(DemoPlans.CATALOGUE)
                .plan(DemoPlans.room("starting-out").withRuns(List.of()));
        BuildPlan build = BuildPlan.of(plan, DemoPlans.CATALOGUE);
        assertThat(build.pieces()).isEmpty();
        assertThat(build.taps()).isEmpty();
        assertThat(build.findings()).extracting(Finding::code).isEmpty();
    }
}
