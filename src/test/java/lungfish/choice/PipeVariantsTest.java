package lungfish.choice;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.piping.PipedRoom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the variants of a room are, by hand; and that each is a room like any other. */
final class PipeVariantsTest {
    private static final double Z_M = 2.2;
    private static final double MILLIMETRE_M = 1e-3;
    private static final double CENT = 0.005;
    /** PVC-U 32 mm PN 10, by the metre. */
    private static final double PRICE_PER_M = 1.92;

    private final Planner planner = new Planner(DemoPlans.CATALOGUE);

    static Stream<String> demos() {
        return DemoPlans.names();
    }

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, Z_M);
    }

    /** A loop of 4 by 3 m, fed in the middle of its first side; one tap on each of the sides beside, 1 m from the front. */
    private static RoomBuilder loop() {
        return aRoom().with(aMain("loop", true, at(0, 0), at(4, 0), at(4, 3), at(0, 3)))
                .with(aRack("A")
                        .shelf(
                                0.9,
                                aTank("t1").with(anOutlet("right").onRun("loop", 5)),
                                aTank("t2").at(0.7).with(anOutlet("left").onRun("loop", 13))))
                .with(aBlower("central").at(2, 0, 2.1));
    }

    private static Room straight() {
        return aRoom().with(aMain("main", false, at(0.2, 0.2), at(4.2, 0.2)))
                .with(aRack("A")
                        .shelf(
                                0.9,
                                aTank("t1").with(anOutlet("a")),
                                aTank("t2").at(0.7).with(anOutlet("b"))))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .build();
    }

    private List<PipeVariant> variants(Room room) {
        return PipeVariants.of(room, planner);
    }

    private PipeVariant variant(Room room, PipeLayout.Main main, int feeds) {
        return variants(room).stream()
                .filter(each -> each.layout().equals(new PipeLayout(main, feeds)))
                .filter(each -> each.room().runs().get(0).size().equals("pvc-u-32-pn10"))
                .findFirst()
                .orElseThrow();
    }

    private static Run run(Room room, String id) {
        return room.runs().stream()
                .filter(each -> each.id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLoopIsOpenedOppositeItsFeedBetweenTheTapsThere() {
        Run opened = run(variant(loop().build(), PipeLayout.Main.OPEN, 1).room(), "loop");

        // from the right tap, 5 m along, over the far side to the left tap, 13 m along: 8 m, but for a stub of 0.1 m
        // each
        assertThat(opened.closed()).isFalse();
        assertThat(opened.lengthM()).isCloseTo(14 - 8 + 0.2, within(MILLIMETRE_M));
        assertThat(opened.points()).containsExactly(at(0, 1.1), at(0, 0), at(4, 0), at(4, 1.1));
    }

    @Test
    void anOpenedLoopSavesTheLeftOutPipeAndTwoElbowsAndBuysTwoCaps() {
        double asDrawn =
                variant(loop().build(), PipeLayout.Main.CLOSED, 1).price().total();
        double opened = variant(loop().build(), PipeLayout.Main.OPEN, 1).price().total();

        // 7.8 m of pipe; elbows and caps cost 1 each
        assertThat(opened - asDrawn).isCloseTo(-7.8 * PRICE_PER_M, within(CENT));
    }

    @Test
    void aStraightMainIsClosedByAPipeThatComesBackBesideIt() {
        PipeVariant closed = variant(straight(), PipeLayout.Main.CLOSED, 1);
        double asDrawn = variant(straight(), PipeLayout.Main.OPEN, 1).price().total();

        assertThat(run(closed.room(), "main").points())
                .containsExactly(at(0.2, 0.2), at(4.2, 0.2), at(4.2, 0.35), at(0.2, 0.35));
        // 4 m back and two short ends of 0.15 m; four elbows at 1 each
        assertThat(closed.price().total() - asDrawn).isCloseTo(4.3 * PRICE_PER_M + 4, within(CENT));
    }

    @Test
    void aMainRoundThreeWallsIsClosedAlongTheFourth() {
        Room room = loop().build();
        Room threeWalls = room.withRuns(List.of(aMain("loop", false, at(0, 3), at(0, 0), at(4, 0), at(4, 3))));

        Run closed = run(variant(kept(threeWalls), PipeLayout.Main.CLOSED, 1).room(), "loop");

        assertThat(closed.closed()).isTrue();
        assertThat(closed.lengthM()).isCloseTo(14, within(MILLIMETRE_M));
    }

    @Test
    void aMainRoundTwoWallsIsClosedAtRightAngles() {
        Room twoWalls = kept(loop().build().withRuns(List.of(aMain("loop", false, at(0, 0), at(4, 0), at(4, 3)))));

        assertThat(run(variant(twoWalls, PipeLayout.Main.CLOSED, 1).room(), "loop")
                        .points())
                .containsExactly(at(0, 0), at(4, 0), at(4, 3), at(0, 3));
    }

    /** Its outlets take the nearest point: the taps typed for the loop may lie beyond the end of another pipe. */
    private static Room kept(Room room) {
        return room.withRacks(
                List.of(aRack("A").shelf(0.9, aTank("t1").with(anOutlet("a"))).build()));
    }

    @Test
    void aSecondFeedLeadsStraightAcrossToTheFarSide() {
        PipeVariant twice = variant(loop().build(), PipeLayout.Main.CLOSED, 2);
        double once = variant(loop().build(), PipeLayout.Main.CLOSED, 1).price().total();

        assertThat(twice.room().runs().get(1).points()).containsExactly(at(2, 0), at(2, 3));
        // 3 m of pipe, and two tees at 1.50
        assertThat(twice.price().total() - once).isCloseTo(3 * PRICE_PER_M + 3, within(CENT));
    }

    @Test
    void whatIsFedTwiceAsDrawnIsNotFedAThirdTime() {
        Room twice = variant(loop().build(), PipeLayout.Main.CLOSED, 2).room();

        assertThat(variants(twice).get(0).layout()).isEqualTo(new PipeLayout(PipeLayout.Main.CLOSED, 2));
        assertThat(variants(twice))
                .extracting(each -> each.room().runs().size())
                .containsOnly(2);
    }

    @Test
    void aPipeThatLeadsAcrossALoopIsNotClosed() {
        Room crossed =
                loop().with(aMain("cross", false, at(0, 1.5), at(4, 1.5))).build();

        assertThat(variants(crossed))
                .allMatch(each -> !run(each.room(), "cross").closed());
    }

    @Test
    void theMainTakesEverySizeOfItsStandardTheSmallestFirst() {
        assertThat(variants(loop().build()).stream()
                        .filter(each -> each.layout().equals(new PipeLayout(PipeLayout.Main.OPEN, 1)))
                        .map(each -> each.room().runs().get(0).size()))
                .containsExactly("pvc-u-25-pn10", "pvc-u-32-pn10", "pvc-u-40-pn10", "pvc-u-50-pn10", "pvc-u-63-pn10");
    }

    @Test
    void aCopperRiserStaysAndABranchIsNeverWiderThanItsMain() {
        Room room = loop().with(sized("riser", Run.Role.RISER, "copper-28", at(2, -0.2), at(2, 0)))
                .with(sized("branch", Run.Role.BRANCH, "pvc-u-40-pn10", at(4, 2), at(5, 2)))
                .build();

        Room smallest = variants(room).get(1).room();
        Room largest = variants(room).get(5).room();

        assertThat(smallest.runs())
                .extracting(Run::size)
                .containsExactly("pvc-u-25-pn10", "copper-28", "pvc-u-25-pn10");
        assertThat(largest.runs()).extracting(Run::size).containsExactly("pvc-u-63-pn10", "copper-28", "pvc-u-40-pn10");
    }

    private static Run sized(String id, Run.Role role, String size, Point... points) {
        return new Run(new RunId(id), id, role, size, false, List.of(points), List.of());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyVariantCanBeSavedAndReadAgain(String name) {
        RoomReader reader = new RoomReader(DemoPlans.CATALOGUE);

        for (PipeVariant variant : variants(DemoPlans.room(name))) {
            assertThat(reader.read(RoomWriter.bytes(variant.room())).value()).contains(variant.room());
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noVariantMovesATap(String name) {
        Room room = DemoPlans.room(name);
        List<Point> asDrawn = taps(room);

        for (PipeVariant variant : variants(room)) {
            List<Point> now = taps(variant.room());
            for (int i = 0; i < asDrawn.size(); i++) {
                assertThat(now.get(i).distanceM(asDrawn.get(i))).isLessThan(3 * MILLIMETRE_M);
            }
        }
    }

    private List<Point> taps(Room room) {
        PipedRoom piped = planner.piped(room).orElseThrow();
        List<Point> taps = new ArrayList<>();
        piped.network().drops().forEach(drop -> Optional.ofNullable(
                        piped.spots().get(drop.node()))
                .ifPresent(spot -> taps.add(spot.place())));
        return taps;
    }

    @Test
    void aRoomWithoutAMainHasNoVariants() {
        assertThat(variants(aRoom().with(aRack("A").shelf(0.9, aTank("t").with(anOutlet("a"))))
                        .build()))
                .isEmpty();
    }

    @Test
    void aTapOfItsOwnStaysATapOfItsOwn() {
        Room opened = variant(loop().build(), PipeLayout.Main.OPEN, 1).room();

        // 1.1 m from the opened end to the first corner, 4 m of front, 1 m up the right side
        assertThat(opened.seats().get(0).outlet().tap()).contains(new Outlet.OnRun(new RunId("loop"), 6.1));
    }
}
