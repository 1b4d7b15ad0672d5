package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.run;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.FittingClass;
import lungfish.catalogue.PipeSize;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

final class MainEditsTest {
    private static final PipeSize SIZE = CATALOGUE.pipe("pvc-u-32-pn10").orElseThrow();
    private static final FittingClass VALVE = CATALOGUE.fitting("ball-valve").orElseThrow();
    private static final RunId LOOP = new RunId("loop");

    /** A loop of 4 by 3 m with its corners at 0 or 4 and 0 or 3; an outlet taps the middle of its last leg, 12.5 m along. */
    private static final Room ROOM = aRoom().with(aMain("loop", true, at(0, 0), at(4, 0), at(4, 3), at(0, 3)))
            .with(aRack("A").at(1, 1).shelf(0.5, aTank("1").with(anOutlet("a").onRun("loop", 12.5))))
            .build();

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, 2);
    }

    private static Run drawn(Room room, Point... corners) {
        List<Run> runs =
                after(room, PipeDrawing.draw(room, SIZE, List.of(corners))).runs();
        return runs.get(runs.size() - 1);
    }

    @Test
    void aLineThatMeetsItsStartIsALoop() {
        Run loop = drawn(Rooms.empty(), at(0, 0), at(4, 0), at(4, 3), at(0, 3), at(0.02, 0.01));
        assertThat(loop.closed()).isTrue();
        assertThat(loop.points()).containsExactly(at(0, 0), at(4, 0), at(4, 3), at(0, 3));
        assertThat(loop.role()).isEqualTo(Run.Role.MAIN);
        assertThat(loop.id()).isEqualTo(LOOP);
        assertThat(loop.fittings()).isEmpty();
    }

    @Test
    void aLineThatDoesNotMeetItsStartIsAMain() {
        Run open = drawn(Rooms.empty(), at(0, 0), at(4, 0), at(4, 3), at(0, 3));
        assertThat(open.closed()).isFalse();
        assertThat(open.name()).isEqualTo("Main");
    }

    @Test
    void aLineFromAnotherPipeIsABranchAndOneUpIsARiser() {
        assertThat(drawn(ROOM, at(4, 1), at(5, 1)).role()).isEqualTo(Run.Role.BRANCH);
        assertThat(drawn(ROOM, at(4, 1), new Point(4, 1, 0.5)).role()).isEqualTo(Run.Role.RISER);
    }

    @Test
    void cornersAtOnePlaceAreOne() {
        assertThat(drawn(Rooms.empty(), at(1, 1), at(1, 1), at(2, 1), at(2, 1.0005))
                        .points())
                .containsExactly(at(1, 1), at(2, 1));
        assertThat(sentence(PipeDrawing.draw(ROOM, SIZE, List.of(at(1, 1), at(1, 1)))))
                .startsWith("A pipe needs two ends that lie apart.");
    }

    @Test
    void aTieGoesSquareFromPipeToPipe() {
        Room room = after(ROOM, PipeDrawing.tie(ROOM, new Outlet.OnRun(LOOP, 1), new Outlet.OnRun(LOOP, 8), SIZE));
        // 8 m along: 4 + 3 m, then 1 m back towards x = 3
        assertThat(run(room, "tie").points()).containsExactly(at(1, 0), at(3, 0), at(3, 3));
        Room straight = after(ROOM, PipeDrawing.tie(ROOM, new Outlet.OnRun(LOOP, 1), new Outlet.OnRun(LOOP, 10), SIZE));
        assertThat(run(straight, "tie").points()).containsExactly(at(1, 0), at(1, 3));
    }

    @Test
    void anOpenedLoopKeepsItsTapsAsNearAsItCan() {
        // the tap sat at (0, 1.5) on the leg that goes; both ends are 1.5 m away, the first corner is the first found
        Room open = after(ROOM, MainEdits.open(ROOM, LOOP));
        assertThat(run(open, "loop").closed()).isFalse();
        assertThat(outlet(open, "a").tap()).hasValue(new Outlet.OnRun(LOOP, 0));
        assertThat(run(after(open, MainEdits.close(open, LOOP)), "loop")).isEqualTo(run(ROOM, "loop"));
    }

    @Test
    void anEndThatMeetsTheOtherEndClosesTheLoop() {
        Room open = aRoom().with(aMain("loop", false, at(0, 0), at(4, 0), at(4, 3), at(1, 1)))
                .build();
        Run met = run(after(open, MainEdits.placeCorner(open, LOOP, 3, at(0.02, 0))), "loop");
        assertThat(met.closed()).isTrue();
        assertThat(met.points()).containsExactly(at(0, 0), at(4, 0), at(4, 3));
        Run first = run(after(open, MainEdits.placeCorner(open, LOOP, 0, at(1, 1.01))), "loop");
        assertThat(first.points()).containsExactly(at(4, 0), at(4, 3), at(1, 1));
    }

    @Test
    void twoCornersMakeNoLoop() {
        Room two = aRoom().with(aMain("loop", false, at(0, 0), at(4, 0))).build();
        assertThat(sentence(MainEdits.close(two, LOOP))).startsWith("A loop needs three corners.");
    }

    @Test
    void anInsertedCornerChangesNothingUntilItIsMoved() {
        Room more = after(ROOM, MainEdits.insertCorner(ROOM, LOOP, 5.5));
        assertThat(run(more, "loop").points()).containsExactly(at(0, 0), at(4, 0), at(4, 1.5), at(4, 3), at(0, 3));
        assertThat(run(more, "loop").lengthM()).isEqualTo(14);
        assertThat(outlet(more, "a").tap()).hasValue(new Outlet.OnRun(LOOP, 12.5));
        assertThat(MainEdits.cornerAt(run(ROOM, "loop"), 5.5)).isEqualTo(2);
        assertThat(MainEdits.cornerAt(run(ROOM, "loop"), 12))
                .as("on the leg that closes it")
                .isEqualTo(4);
    }

    @Test
    void runsGoUpTogetherAndKeepTheirTaps() {
        Room high = after(ROOM, MainEdits.level(ROOM, List.of(LOOP), 2.3));
        assertThat(run(high, "loop").points()).extracting(Point::zM).containsOnly(2.3);
        assertThat(outlet(high, "a").tap()).hasValue(new Outlet.OnRun(LOOP, 12.5));
        assertThat(sentence(MainEdits.level(ROOM, List.of(LOOP), 3))).contains("the ceiling (240 cm)");
    }

    @Test
    void theSizeIsThatOfTheChosenRuns() {
        PipeSize other = CATALOGUE.pipe("pvc-u-40-pn10").orElseThrow();
        assertThat(run(after(ROOM, MainEdits.size(ROOM, List.of(LOOP), other)), "loop")
                        .size())
                .isEqualTo("pvc-u-40-pn10");
    }

    @Test
    void valvesSitOnThePipeAndCanBeSet() {
        Room fitted = after(ROOM, FittingEdits.insert(ROOM, LOOP, 2, VALVE));
        Room shut = after(fitted, FittingEdits.opening(fitted, LOOP, 0, VALVE, OptionalDouble.of(0)));
        assertThat(run(shut, "loop").fittings())
                .containsExactly(new Run.Fitting("ball-valve", 2, OptionalDouble.of(0)));
        assertThat(sentence(FittingEdits.insert(ROOM, LOOP, 15, VALVE)))
                .startsWith("The fitting would sit beyond the end of the pipe, which is 1400 cm long.");
    }

    @Test
    void onlyAValveHasAnOpening() {
        FittingClass union = CATALOGUE.fitting("union").orElseThrow();
        Room fitted = after(ROOM, FittingEdits.insert(ROOM, LOOP, 2, union));
        assertThat(FittingEdits.opening(fitted, LOOP, 0, union, OptionalDouble.of(0.5))
                        .refused())
                .isPresent();
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(PipeDrawing.draw(Rooms.empty(), SIZE, List.of(at(0, 0), at(1, 0))))
                        .done())
                .isEqualTo("Draw a main");
        assertThat(done(FittingEdits.insert(ROOM, LOOP, 2, VALVE)).done())
                .isEqualTo("Insert ball valve into pipe loop");
        assertThat(done(MainEdits.open(ROOM, LOOP)).done()).isEqualTo("Open pipe loop");
    }

    @Test
    void theNextSizeIsOfTheSameStandard() {
        Room larger = after(ROOM, MainEdits.resize(ROOM, List.of(LOOP), CATALOGUE, 1));
        assertThat(run(larger, "loop").size()).isEqualTo("pvc-u-40-pn10");
        Room smaller = after(ROOM, MainEdits.resize(ROOM, List.of(LOOP), CATALOGUE, -1));
        assertThat(run(smaller, "loop").size()).isEqualTo("pvc-u-25-pn10");
        // 25 mm is the smallest of PN 10 that the catalogue has
        assertThat(sentence(MainEdits.resize(smaller, List.of(LOOP), CATALOGUE, -1)))
                .startsWith("The catalogue has no smaller pipe");
    }

    @Test
    void aCornerIsInsertedInTheMiddleOfTheLongestLeg() {
        Room more = after(ROOM, MainEdits.insertCorner(ROOM, LOOP));
        assertThat(run(more, "loop").points()).containsExactly(at(0, 0), at(2, 0), at(4, 0), at(4, 3), at(0, 3));
    }

    @Test
    void aLegIsBentWhereItIsPulled() {
        Room bent = after(ROOM, MainEdits.bend(ROOM, LOOP, 3, at(0.5, 1.5)));
        assertThat(run(bent, "loop").points()).containsExactly(at(0, 0), at(4, 0), at(4, 3), at(0, 3), at(0.5, 1.5));
    }

    @Test
    void twoPipesAreTiedWhereTheyComeNearest() {
        Room two = after(ROOM, PipeDrawing.draw(ROOM, SIZE, List.of(at(5, 1), at(5.5, 1), at(5.5, 2))));
        RunId other = two.runs().get(1).id();
        Room tied = after(two, PipeDrawing.tie(two, LOOP, other, SIZE));
        // its end at (5, 1) is nearest to the loop, whose side runs along x = 4
        assertThat(tied.runs().get(2).points()).containsExactly(at(4, 1), at(5, 1));
    }
}
