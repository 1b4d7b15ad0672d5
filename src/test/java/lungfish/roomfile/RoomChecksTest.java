package lungfish.roomfile;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Backup;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Rooms;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankBuilder;
import lungfish.room.TankId;
import lungfish.room.Wishes;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RoomChecksTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final String TANK = "/racks/0/shelves/0/tanks/0";
    private static final String OUTLET = TANK + "/outlets/0";

    private static List<Problem> problems(RoomBuilder room) {
        return RoomChecks.problems(room.build(), CATALOGUE);
    }

    private static List<Problem> ofTank(TankBuilder... tanks) {
        return problems(aRoom().with(aRack("A").shelf(0.5, tanks)));
    }

    private static List<Problem> ofOutlet(OutletBuilder outlet) {
        return problems(aRoom().with(aMain("main", false, new Point(0, 0, 2), new Point(4, 0, 2)))
                .with(aRack("A").shelf(0.5, aTank("t").with(outlet))));
    }

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    @Property(tries = 100)
    void soundRoomsHaveNoProblems(@ForAll("rooms") Room room) {
        assertThat(RoomChecks.problems(room, CATALOGUE)).isEmpty();
    }

    @Test
    void aSmallRoomHasNoProblems() {
        assertThat(RoomChecks.problems(Rooms.small(), CATALOGUE)).isEmpty();
    }

    @Test
    void anIdIsTakenOnceAmongItsKindInTheWholeRoom() {
        Problem problem = problems(aRoom().with(aRack("A").shelf(0.5, aTank("t")))
                        .with(aRack("B").shelf(0.5, aTank("t"))))
                .get(0);
        assertThat(problem)
                .isEqualTo(new Problem(
                        "/racks/1/shelves/0/tanks/0/id",
                        "the id \"t\" is taken by /racks/0/shelves/0/tanks/0",
                        "an id of its own"));
    }

    @Test
    void aTankAndARackMayShareAName() {
        assertThat(problems(aRoom().with(aRack("A").shelf(0.5, aTank("A").with(anOutlet("A"))))))
                .isEmpty();
    }

    @Test
    void waterIsNoDeeperThanItsTankIsHigh() {
        assertThat(ofTank(aTank("t").sized(0.6, 0.3, 0.45).waterDepthM(1.8)))
                .extracting(Problem::sentence)
                .containsExactly(TANK + "/water_depth_m: 1.8 is deeper than the tank is high (0.45). Expected at most"
                        + " 0.45, measured from the water line to the bottom glass.");
    }

    @Test
    void theAirReleaseIsNoDeeperThanTheWater() {
        assertThat(ofTank(aTank("t").waterDepthM(0.3).with(anOutlet("o").depthM(0.31))))
                .extracting(Problem::path, Problem::found)
                .containsExactly(tuple(OUTLET + "/depth_m", "0.31 is deeper than the water (0.3)"));
    }

    @Test
    void aTankEndsOnItsShelf() {
        assertThat(ofTank(aTank("t").at(1.5).sized(0.6, 0.3, 0.36)))
                .extracting(Problem::path, Problem::found)
                .containsExactly(tuple(TANK + "/x_m", "the tank ends at 2.1, beyond the shelf (2)"));
    }

    @Test
    void tanksStandBesideEachOtherWhateverTheirOrder() {
        assertThat(ofTank(aTank("right").at(0.6), aTank("left").at(0))).isEmpty();
        assertThat(ofTank(aTank("right").at(0.5), aTank("left").at(0)))
                .containsExactly(new Problem(
                        TANK + "/x_m",
                        "0.5 lies inside the tank \"left\" beside it, which ends at 0.6",
                        "at least 0.6"));
    }

    @Test
    void shelvesComeFromTheBottomUp() {
        assertThat(problems(aRoom().with(aRack("A").shelf(1).shelf(0.5))))
                .extracting(Problem::path)
                .containsExactly("/racks/0/shelves/1/height_m");
    }

    @Test
    void anOutletIsAskedForATargetOrATurnover() {
        assertThat(ofOutlet(anOutlet("o").targetM3PerS(2e-5).turnoverPerS(1e-3)))
                .containsExactly(new Problem(
                        OUTLET + "/turnover_per_s",
                        "a target is given too",
                        "either target_m3_per_s or turnover_per_s, not both"));
    }

    @Test
    void leastTargetAndMostStandInOrder() {
        assertThat(ofOutlet(anOutlet("o").leastM3PerS(3e-5).targetM3PerS(2e-5)))
                .containsExactly(new Problem(
                        OUTLET + "/least_m3_per_s", "0.00003 is more than the target (0.00002)", "at most 0.00002"));
        assertThat(ofOutlet(anOutlet("o").targetM3PerS(2e-5).mostM3PerS(1e-5)))
                .containsExactly(new Problem(
                        OUTLET + "/most_m3_per_s", "0.00001 is less than the target (0.00002)", "at least 0.00002"));
        assertThat(ofOutlet(anOutlet("o").leastM3PerS(2e-5).mostM3PerS(1e-5))).hasSize(1);
        assertThat(ofOutlet(anOutlet("o").leastM3PerS(1e-5).targetM3PerS(2e-5).mostM3PerS(3e-5)))
                .isEmpty();
    }

    @Test
    void aTapHangsOnARunThatIsThereAndWithinItsLength() {
        assertThat(ofOutlet(anOutlet("o").onRun("mian", 1)))
                .containsExactly(
                        new Problem(OUTLET + "/tap/run", "there is no run \"mian\"", "\"main\" (did you mean that?)"));
        assertThat(ofOutlet(anOutlet("o").onRun("main", 4.5)))
                .containsExactly(
                        new Problem(OUTLET + "/tap/at_m", "4.5 is beyond the end of the run \"main\"", "at most 4"));
        assertThat(ofOutlet(anOutlet("o").onRun("main", 4))).isEmpty();
    }

    @Test
    void everythingElseThatIsNamedIsThereToo() {
        Outlet.OnRun nowhere = new Outlet.OnRun(new RunId("x"), 0);
        RoomBuilder room = aRoom().with(
                        aRack("A").shelf(0.5, aTank("t").with(anOutlet("o").onGang("x"))))
                .with(new Gang(
                        new GangId("g"), Gang.Kind.TEES, new Point(1, 1, 1), Optional.of(nowhere), Optional.empty()))
                .with(aBlower("b").today("x", "o", "o").circuit("x").feeds("x", 0))
                .with(new Stirrer(
                        new StirrerId("s"),
                        new TankId("x"),
                        Stirrer.Kind.POWERHEAD,
                        OptionalDouble.empty(),
                        Optional.empty()));
        assertThat(problems(room))
                .extracting(Problem::path)
                .containsExactly(
                        OUTLET + "/tap/gang",
                        "/gangs/0/tap/run",
                        "/blowers/0/feeds/run",
                        "/blowers/0/circuit",
                        "/blowers/0/serves/0",
                        "/blowers/0/serves/2",
                        "/stirrers/0/tank");
    }

    @Test
    void everyClassIsKnown() {
        RoomBuilder room = aRoom().with(aRack("A")
                        .shelf(
                                0.5,
                                aTank("t")
                                        .with(anOutlet("o")
                                                .device("x1")
                                                .valve("x2", 1)
                                                .airline("x3", 1)
                                                .checkValve("x4"))))
                .with(new Run(
                        new RunId("r"),
                        "r",
                        Run.Role.MAIN,
                        "x5",
                        false,
                        List.of(new Point(0, 0, 2), new Point(1, 0, 2)),
                        List.of(new Run.Fitting("x6", 0, OptionalDouble.empty()))))
                .with(aBlower("b").machine("x7"));
        assertThat(problems(room))
                .extracting(Problem::path)
                .containsExactly(
                        OUTLET + "/device",
                        OUTLET + "/airline/size",
                        OUTLET + "/valve/kind",
                        OUTLET + "/check_valve",
                        "/runs/0/size",
                        "/runs/0/fittings/0/kind",
                        "/blowers/0/machine");
    }

    @Test
    void noCheckValveIsAnAnswer() {
        assertThat(ofOutlet(anOutlet("o").checkValve(Outlet.NO_CHECK_VALVE))).isEmpty();
    }

    @Test
    void aWishIsMadeOnce() {
        Wishes twice = Wishes.NONE.withOrder(List.of(Wishes.Wish.QUIETEST, Wishes.Wish.QUIETEST));
        assertThat(problems(aRoom().with(twice))).extracting(Problem::path).containsExactly("/wishes/order/1");
    }

    /** Where it is not said, the alarm goes at 3 mg/L, and the danger begins at 2 mg/L (assumed.csv). */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
        0.004,  0.002,  ''
        0.003,  0.003,  /wishes/danger_oxygen_kg_per_m3
        0.003,  0.004,  /wishes/danger_oxygen_kg_per_m3
        -,      0.003,  /wishes/danger_oxygen_kg_per_m3
        -,      0.0029, ''
        0.002,  -,      /wishes/alarm_oxygen_kg_per_m3
        0.0021, -,      ''""")
    void theAlarmGoesBeforeThereIsDanger(@Nullable Double alarm, @Nullable Double danger, String path) {
        Wishes wishes = Wishes.NONE.withAlarmKgPerM3(maybe(alarm)).withDangerKgPerM3(maybe(danger));
        assertThat(problems(aRoom().with(wishes)))
                .extracting(Problem::path)
                .isEqualTo(path.isEmpty() ? List.of() : List.of(path));
    }

    private static OptionalDouble maybe(@Nullable Double si) {
        return si == null ? OptionalDouble.empty() : OptionalDouble.of(si);
    }

    /** An inverter stands in the same file of the catalogue, but is no pump. */
    @Test
    void batteryPumpsAreOfAClassOfBatteryPumps() {
        assertThat(problems(aRoom().with(pumps("battery-pump-large")))).isEmpty();
        assertThat(problems(aRoom().with(pumps("inverter-300"))))
                .extracting(Problem::path)
                .containsExactly("/backup/battery_pumps/kind");
    }

    private static Backup pumps(String kind) {
        return Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps(kind, 2)));
    }
}
