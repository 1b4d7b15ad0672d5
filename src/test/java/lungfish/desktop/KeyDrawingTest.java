package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawing by keys alone: the garage, in metric units, its grid 5 cm. */
final class KeyDrawingTest {
    private static final double ROUNDING_M = 1e-6;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");
    private RoomHand hand = new RoomHand(bench);

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
        hand = new RoomHand(bench);
    }

    private Room room() {
        return bench.desk().room();
    }

    private void keys(String... keys) {
        List.of(keys).forEach(hand::key);
    }

    private Run drawn() {
        return room().runs().get(room().runs().size() - 1);
    }

    private Sketch.Cross aim() {
        return bench.pane().center().room().aim().over(Sketch.NOTHING).strokes().stream()
                .filter(Sketch.Cross.class::isInstance)
                .map(Sketch.Cross.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private void aimAt(double xM, double yM) {
        bench.pane().center().room().aim().go(xM, yM);
    }

    @Test
    void arrowsMoveTheAimByFiveStepsOfTheGridWithAltByOneWithShiftTooByAFifth() {
        keys("P");
        aimAt(2, 1);
        keys("RIGHT", "DOWN");
        assertThat(aim()).isEqualTo(new Sketch.Cross(2.25, 1.25));
        keys("alt LEFT");
        assertThat(aim().xM()).isCloseTo(2.2, within(ROUNDING_M));
        keys("shift alt UP");
        assertThat(aim().yM()).isCloseTo(1.24, within(ROUNDING_M));
    }

    @Test
    void withTheMenuKeyTheAimGoesOnToTheNextWallOrRack() {
        keys("R");
        aimAt(room().shell().lengthM() - 0.001, 1);
        keys("ctrl LEFT");
        double nearest = room().racks().stream()
                .flatMap(rack -> List.of(rack.xM(), rack.xM() + rack.spanXM()).stream())
                .mapToDouble(x -> x)
                .filter(x -> x < room().shell().lengthM() - 0.02)
                .max()
                .orElseThrow();
        double corner = room().runs().stream()
                .flatMap(run -> run.points().stream())
                .mapToDouble(Point::xM)
                .filter(x -> x < room().shell().lengthM() - 0.02)
                .max()
                .orElseThrow();
        assertThat(aim().xM()).isEqualTo(Math.max(nearest, corner));
    }

    @Test
    void aPipeIsDrawnByKeysAndEndedByEnterTwice() {
        int runs = room().runs().size();
        keys("P");
        aimAt(3, 1.5);
        keys("ENTER", "RIGHT", "RIGHT", "ENTER", "DOWN", "ENTER");
        assertThat(room().runs()).hasSize(runs);
        keys("ENTER");
        assertThat(room().runs()).hasSize(runs + 1);
        // two long steps of 25 cm across, one down
        assertThat(drawn().points()).extracting(Point::xM).containsExactly(3.0, 3.5, 3.5);
        assertThat(drawn().points()).extracting(Point::yM).containsExactly(1.5, 1.5, 1.75);
        assertThat(bench.pane().view().selection().parts()).containsExactly(Part.run(drawn().id()));
    }

    @Test
    void aTypedLengthIsThatOfTheNextLeg() {
        keys("P");
        aimAt(3, 1.5);
        keys("ENTER", "RIGHT");
        assertThat(hand.tool().takesLength()).isTrue();
        hand.tool().length(1.37);
        bench.pane().center().room().follow();
        keys("DOWN");
        hand.tool().length(0.4);
        hand.tool().finished();
        assertThat(drawn().points()).hasSize(3);
        assertThat(drawn().points().get(1).xM()).isCloseTo(4.37, within(ROUNDING_M));
        assertThat(drawn().points().get(2).yM()).isCloseTo(1.9, within(ROUNDING_M));
        assertThat(drawn().lengthM()).isCloseTo(1.77, within(ROUNDING_M));
    }

    @Test
    void pageDownOnTheWayMakesThePipeGoStraightDown() {
        keys("P");
        aimAt(3, 1.5);
        keys("ENTER", "PAGE_DOWN", "PAGE_DOWN", "RIGHT");
        // two presses, each two steps of 5 cm
        assertThat(hand.tool().sketch().note().orElseThrow().words()).startsWith("down 0.2 m to");
        keys("ENTER", "ENTER");
        double high = drawn().points().get(0).zM();
        assertThat(drawn().points()).extracting(Point::xM).containsExactly(3.0, 3.0, 3.25);
        assertThat(drawn().points().get(1).zM()).isCloseTo(high - 0.2, within(ROUNDING_M));
        assertThat(drawn().points().get(2).zM()).isCloseTo(high - 0.2, within(ROUNDING_M));
    }

    @Test
    void aBranchBeginsOnThePipeAtItsHeightAndARiserGoesStraightDownFromIt() {
        Run loop = room().runs().get(0);
        Point on = loop.at(1);
        keys("P");
        aimAt(on.xM(), on.yM());
        keys("ENTER", "PAGE_DOWN", "PAGE_DOWN", "PAGE_DOWN", "ENTER");
        assertThat(drawn().role()).isEqualTo(Run.Role.RISER);
        assertThat(drawn().points()).hasSize(2);
        assertThat(drawn().points().get(0).zM()).isEqualTo(on.zM());
        assertThat(drawn().points().get(0).distanceM(on)).isLessThan(Run.TOUCH_M);
    }

    @Test
    void backspaceTakesBackTheLastCorner() {
        keys("P");
        aimAt(3, 1.5);
        keys("ENTER", "RIGHT", "ENTER", "DOWN", "ENTER", "BACK_SPACE", "ENTER");
        assertThat(drawn().points()).hasSize(2);
    }

    @Test
    void aRackIsDrawnByEnterArrowsAndEnter() {
        int racks = room().racks().size();
        keys("R");
        aimAt(3, 1.3);
        keys("ENTER", "RIGHT", "RIGHT", "RIGHT", "RIGHT", "RIGHT", "DOWN", "DOWN", "ENTER");
        assertThat(room().racks()).hasSize(racks + 1);
        assertThat(room().racks().get(racks).spanXM()).isCloseTo(1.25, within(ROUNDING_M));
        assertThat(room().racks().get(racks).spanYM()).isCloseTo(0.5, within(ROUNDING_M));
    }

    @Test
    void aValveIsFittedByKeys() {
        Run loop = room().runs().get(0);
        int fittings = loop.fittings().size();
        Point on = loop.at(1.2);
        keys("F");
        aimAt(on.xM(), on.yM());
        keys("ENTER");
        assertThat(room().runs().get(0).fittings()).hasSize(fittings + 1);
    }

    @Test
    void arrowsWalkTheRoomDownOntoAPipeAndUpAgain() {
        bench.pane().view().chooseNothing();
        keys("RIGHT");
        assertThat(bench.pane().view().selection().parts())
                .containsExactly(Part.rack(room().racks().get(0).id()));
        Run loop = room().runs().get(0);
        for (int i = 0; i < room().racks().size(); i++) {
            keys("RIGHT");
        }
        assertThat(bench.pane().view().selection().parts()).containsExactly(Part.run(loop.id()));
        keys("DOWN");
        assertThat(bench.pane().view().selection().parts()).containsExactly(Part.corner(loop.id(), 0));
        keys("UP");
        assertThat(bench.pane().view().selection().parts()).containsExactly(Part.run(loop.id()));
    }
}
