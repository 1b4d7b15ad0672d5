package lungfish.edit;

import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/** A room of 6 by 4 m; rack A covers 1 to 3 by 1 to 1.5 m; a main runs at 2.2 m height from (0.2, 3) to (5, 3). */
final class SnapTest {
    private static final double ROUNDING_M = 1e-9;
    private static final Room ROOM = aRoom().with(aRack("A").at(1, 1))
            .with(aMain("main", false, new Point(0.2, 3, 2.2), new Point(5, 3, 2.2)))
            .build();

    private static Snap snap(OptionalDouble gridM) {
        return new Snap(ROOM, Selection.NONE, gridM, 0.05);
    }

    private static Snap snap() {
        return snap(OptionalDouble.empty());
    }

    @Test
    void anEdgeComesToRestAtTheWall() {
        Snapped snapped = snap().box(new Box(0.03, 2, 2.03, 2.5));
        assertThat(snapped.dxM()).isCloseTo(-0.03, within(ROUNDING_M));
        assertThat(snapped.dyM()).isZero();
        assertThat(snapped.guides()).containsExactly(new Guide(Guide.Reason.WALL, 0, 0, 0, 4, "wall"));
    }

    @Test
    void pipeHangsInItsClipsOffTheFaceOfAWall() {
        // pipe of 32 mm: half of it, and 15 mm of clip, are 31 mm
        Snap clipped = snap().clipped(Tried.CATALOGUE.pipe("pvc-u-32-pn10").orElseThrow());
        SnappedPoint corner = clipped.next(List.of(), new Point(5.98, 0.05, 2));
        assertThat(corner.place().xM()).isCloseTo(5.969, within(ROUNDING_M));
        assertThat(corner.place().yM()).isCloseTo(0.031, within(ROUNDING_M));
        assertThat(corner.guides()).extracting(Guide::words).containsOnly("along the wall");
    }

    @Test
    void pipeHangsOnEitherSideOfAnInnerWall() {
        Room walled = Tried.after(ROOM, RoomEdits.addWall(ROOM, 4, 0, 4, 2));
        Snap clipped = new Snap(walled, Selection.NONE, OptionalDouble.empty(), 0.05)
                .clipped(Tried.CATALOGUE.pipe("pvc-u-32-pn10").orElseThrow());
        assertThat(clipped.next(List.of(), new Point(3.98, 0.7, 2)).place().xM())
                .isCloseTo(3.969, within(ROUNDING_M));
        assertThat(clipped.next(List.of(), new Point(4.02, 0.7, 2)).place().xM())
                .isCloseTo(4.031, within(ROUNDING_M));
    }

    @Test
    void aCornerComesInLineWithBothOfItsNeighbours() {
        SnappedPoint corner =
                snap().corner(List.of(new Point(4, 2, 2), new Point(5, 2.6, 2)), new Point(4.03, 2.58, 2));
        assertThat(corner.place().xM()).isCloseTo(4, within(ROUNDING_M));
        assertThat(corner.place().yM()).isCloseTo(2.6, within(ROUNDING_M));
    }

    @Test
    void whatSitsOnAPipeComesToRestAnywhereOnIt() {
        // the pipe begins at x = 0.2: its end draws a branch, but not a valve
        assertThat(snap().onPipe(new Point(0.23, 3.02, 0)).orElseThrow().place())
                .isEqualTo(new Point(0.23, 3, 2.2));
        assertThat(snap().onPipe(new Point(2, 2, 0))).isEmpty();
    }

    @Test
    void anEdgeComesToRestAtARacksEdgeAndSaysWhich() {
        Snapped snapped = snap().box(new Box(3.04, 1.98, 4.04, 2.48));
        assertThat(snapped.dxM()).isCloseTo(-0.04, within(ROUNDING_M));
        // from the rack's own top edge at 1 m down to where the box ends
        assertThat(snapped.guides())
                .containsExactly(new Guide(Guide.Reason.RACK, 3, 1, 3, 2.48, "rack A's right edge"));
    }

    @Test
    void middlesComeInLine() {
        // the rack's middle is at x = 2; the box of 0.7 m has its own at 2.01
        Snapped snapped = snap().box(new Box(1.66, 2, 2.36, 2.4));
        assertThat(snapped.dxM()).isCloseTo(-0.01, within(ROUNDING_M));
        assertThat(snapped.guides()).extracting(Guide::words).containsExactly("rack A's middle");
    }

    @Test
    void nothingNearIsNoGuide() {
        assertThat(snap().box(new Box(3.5, 2, 4.5, 2.5))).isEqualTo(new Snapped(0, 0, List.of()));
    }

    @Test
    void theGridDrawsWhatNothingElseDraws() {
        Snapped snapped = snap(OptionalDouble.of(0.1)).box(new Box(3.52, 1.02, 4.52, 1.37));
        assertThat(snapped.dxM()).isCloseTo(-0.02, within(ROUNDING_M));
        assertThat(snapped.dyM()).isCloseTo(-0.02, within(ROUNDING_M));
        assertThat(snapped.guides()).extracting(Guide::words).containsExactly("grid", "rack A's top edge");
    }

    @Test
    void whatMovesDrawsNothing() {
        Snap own = new Snap(ROOM, Selection.of(Part.rack(new RackId("A"))), OptionalDouble.empty(), 0.05);
        assertThat(own.box(new Box(1.03, 1.03, 3.03, 1.53)).guides()).isEmpty();
    }

    @Test
    void aPointComesToRestOnThePipeAtItsHeight() {
        SnappedPoint point = snap().point(new Point(2, 3.04, 0));
        assertThat(point.place()).isEqualTo(new Point(2, 3, 2.2));
        assertThat(point.onto()).hasValue(new Outlet.OnRun(new RunId("main"), 1.8));
        assertThat(point.guides()).extracting(Guide::words).containsExactly("the main");
    }

    @Test
    void theEndOfAPipeWinsOverItsLeg() {
        assertThat(snap().point(new Point(4.97, 3.02, 0)).place()).isEqualTo(new Point(5, 3, 2.2));
    }

    @Test
    void theFourthCornerNearTheStartClosesTheLoop() {
        List<Point> drawn = List.of(new Point(1, 2, 2), new Point(2, 2, 2), new Point(2, 2.5, 2));
        SnappedPoint point = snap().next(drawn, new Point(1.02, 2.03, 2));
        assertThat(point.closes()).isTrue();
        assertThat(point.place()).isEqualTo(drawn.get(0));
        assertThat(snap().next(drawn.subList(0, 2), new Point(1.02, 2.03, 2)).closes())
                .isFalse();
    }

    @Test
    void aLoopClosesWhereItsStartWasPointedAtThoughThatWasDrawnToTheWalls() {
        // the start rests at 0.031 m from both walls; the hand is at 0.075 m again, 0.062 m away from it on the slant
        Snap clipped = snap().clipped(Tried.CATALOGUE.pipe("pvc-u-32-pn10").orElseThrow());
        Point hand = new Point(0.075, 0.075, 2);
        Point start = clipped.next(List.of(), hand).place();
        assertThat(start.xM()).isCloseTo(0.031, within(ROUNDING_M));
        List<Point> drawn = List.of(start, new Point(5, 0.031, 2), new Point(5, 2, 2));
        assertThat(clipped.next(drawn, hand).closes()).isTrue();
    }

    @Test
    void theEndOfAPipeMeetsItsOtherEnd() {
        Room open = aRoom().with(aMain(
                        "open", false, new Point(1, 1, 2), new Point(3, 1, 2), new Point(3, 2, 2), new Point(2, 3, 2)))
                .build();
        RunId id = new RunId("open");
        Snap end = new Snap(open, Selection.of(Part.corner(id, 3)), OptionalDouble.empty(), 0.05);
        assertThat(end.point(new Point(1.03, 0.98, 2)).closes()).isTrue();
        Snap middle = new Snap(open, Selection.of(Part.corner(id, 2)), OptionalDouble.empty(), 0.05);
        assertThat(middle.point(new Point(1.03, 0.98, 2)).closes()).isFalse();
    }

    @Test
    void whatStandsOnTheFloorDoesNotCareForPipesAboveIt() {
        SnappedPoint point = snap().ground(new Point(2, 3.04, 0));
        assertThat(point).isEqualTo(new SnappedPoint(new Point(2, 3.04, 0), List.of(), Optional.empty(), false));
    }

    @Test
    void aCornerComesInLineWithTheOneBefore() {
        SnappedPoint point = snap().next(List.of(new Point(4, 2, 2)), new Point(4.03, 2.6, 2));
        assertThat(point.place()).isEqualTo(new Point(4, 2.6, 2));
        assertThat(point.guides()).containsExactly(new Guide(Guide.Reason.LINE, 4, 2, 4, 2.6, "straight on"));
    }

    @Test
    void clearancesReachToTheNearestThingOnEachSide() {
        List<Clearance> around = Clearance.around(ROOM, new Box(1.5, 2, 2.5, 2.5), Selection.NONE);
        assertThat(around)
                .extracting(Clearance::side, Clearance::lengthM, Clearance::words)
                .containsExactly(
                        tuple(Clearance.Side.LEFT, 1.5, "wall"),
                        tuple(Clearance.Side.RIGHT, 3.5, "wall"),
                        tuple(Clearance.Side.TOP, 0.5, "rack A"),
                        tuple(Clearance.Side.BOTTOM, 1.5, "wall"));
    }

    @Test
    void aDimensionLineRunsFromTheMiddleOfTheEdge() {
        Clearance top = Clearance.around(ROOM, new Box(1.5, 2, 2.5, 2.5), Selection.NONE)
                .get(2);
        assertThat(List.of(top.fromXM(), top.fromYM(), top.toXM(), top.toYM())).containsExactly(2.0, 2.0, 2.0, 1.5);
    }

    @Test
    void clearancesSeeInnerWalls() {
        Room walled = Tried.after(ROOM, RoomEdits.addWall(ROOM, 4, 1.8, 4, 3));
        assertThat(Clearance.around(walled, new Box(1.5, 2, 2.5, 2.5), Selection.NONE)
                        .get(1)
                        .lengthM())
                .isEqualTo(1.5);
    }
}
