package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pipe, what sits on it, doors and walls, by hand on the room from above: the basement with its main loop. */
final class PipeToolsTest {
    private static final double PIXEL_M = RoomHand.PIXEL_M;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "basement-rainbows");
    private RoomHand hand = new RoomHand(bench);

    @BeforeEach
    void theBasementIsOpen() {
        bench = new Bench(folder, "basement-rainbows");
        hand = new RoomHand(bench);
    }

    private Room room() {
        return bench.desk().room();
    }

    private Run loop() {
        return room().runs().get(0);
    }

    private Selection chosen() {
        return bench.pane().view().selection();
    }

    private String undo() {
        return bench.desk().history().toUndo().orElseThrow();
    }

    private Point middle(Run run, int leg) {
        return run.corners().get(leg).towards(run.corners().get(leg + 1), 0.5);
    }

    private void choose(Part part) {
        bench.pane().view().select(Selection.of(part));
    }

    @Test
    void aValveIsFittedByTheLetterAndAClickAndIsChosenThen() {
        int fittings = loop().fittings().size();
        Point at = loop().at(2.1);
        hand.key("F");
        hand.click(at.xM(), at.yM());
        assertThat(loop().fittings()).hasSize(fittings + 1);
        Run.Fitting valve = loop().fittings().get(fittings);
        assertThat(valve.kind()).isEqualTo("ball-valve");
        assertThat(valve.atM()).isCloseTo(2.1, within(PIXEL_M));
        assertThat(chosen().parts()).containsExactly(Part.fitting(loop().id(), fittings));
        assertThat(undo()).isEqualTo("Insert ball valve into pipe " + loop().name());
    }

    @Test
    void whereNoPipeIsNothingIsFittedAndTheHandIsTold() {
        hand.key("F");
        hand.press(4.5, 3);
        assertThat(hand.tool().sketch().note().orElseThrow().words()).startsWith("There is no pipe at that place");
        hand.release(4.5, 3);
        assertThat(bench.desk().history().toUndo()).isEmpty();
    }

    @Test
    void aFittingIsDraggedAlongItsPipeAndDeleted() {
        Run.Fitting union = loop().fittings().get(0);
        Point at = loop().at(union.atM());
        Point to = loop().at(union.atM() + 0.3);
        hand.drag(at.xM(), at.yM(), to.xM(), to.yM());
        assertThat(loop().fittings().get(0).atM()).isCloseTo(union.atM() + 0.3, within(PIXEL_M));
        int fittings = loop().fittings().size();
        hand.act("Delete");
        assertThat(loop().fittings()).hasSize(fittings - 1);
    }

    @Test
    void aDragFromTheMiddleOfALegPullsACornerOutOfIt() {
        choose(Part.run(loop().id()));
        int corners = loop().points().size();
        Point middle = middle(loop(), 1);
        hand.drag(middle.xM(), middle.yM(), middle.xM() + 0.4, middle.yM());
        assertThat(loop().points()).hasSize(corners + 1);
        Point corner = loop().points().get(2);
        assertThat(corner.xM()).isCloseTo(middle.xM() + 0.4, within(PIXEL_M));
        assertThat(corner.zM()).isEqualTo(middle.zM());
        assertThat(undo()).startsWith("Insert a corner into");
    }

    @Test
    void aCornerIsChosenByAClickAndDeleted() {
        choose(Part.run(loop().id()));
        Point middle = middle(loop(), 1);
        hand.drag(middle.xM(), middle.yM(), middle.xM() + 0.4, middle.yM());
        List<Point> before = loop().points();
        hand.click(before.get(2).xM(), before.get(2).yM());
        assertThat(chosen().parts()).containsExactly(Part.corner(loop().id(), 2));
        hand.act("Delete");
        assertThat(loop().points()).hasSize(before.size() - 1).doesNotContain(before.get(2));
    }

    @Test
    void aPulledCornerShowsTheLengthsOfItsLegs() {
        choose(Part.run(loop().id()));
        Point corner = loop().points().get(2);
        hand.press(corner.xM(), corner.yM());
        hand.pull(corner.xM() + 0.3, corner.yM() + 0.2);
        assertThat(hand.tool().sketch().strokes())
                .filteredOn(Sketch.Length.class::isInstance)
                .hasSize(2);
        hand.release(corner.xM() + 0.3, corner.yM() + 0.2);
        assertThat(loop().points().get(2).xM()).isCloseTo(corner.xM() + 0.3, within(PIXEL_M));
    }

    @Test
    void aDoorIsDraggedRoundTheCorner() {
        Shell.Door door = room().shell().doors().get(0);
        double middle = door.xM() + door.widthM() / 2;
        double farM = room().shell().lengthM();
        hand.drag(middle, door.yM(), farM, 3.0);
        assertThat(room().shell().doors().get(0).xM()).isEqualTo(farM);
        assertThat(chosen().parts()).containsExactly(Part.door(0));
        assertThat(undo()).isEqualTo("Move a door");
    }

    @Test
    void anEndOfAnInnerWallIsPulled() {
        Shell.Wall wall = room().shell().walls().get(1);
        hand.click((wall.fromXM() + wall.toXM()) / 2, (wall.fromYM() + wall.toYM()) / 2);
        assertThat(chosen().parts()).containsExactly(Part.wall(1));
        hand.drag(wall.toXM(), wall.toYM(), wall.toXM() - 0.5, wall.toYM());
        assertThat(room().shell().walls().get(1).toXM()).isCloseTo(wall.toXM() - 0.5, within(PIXEL_M));
        assertThat(room().shell().walls().get(1).fromXM()).isEqualTo(wall.fromXM());
    }

    @Test
    void aRackDrawnBeyondTheWallsEndsAtThem() {
        hand.key("R");
        hand.drag(5, 2, room().shell().lengthM() + 1, 2.5);
        assertThat(room().racks().get(room().racks().size() - 1).xM()).isCloseTo(5, within(PIXEL_M));
        assertThat(room().racks().get(room().racks().size() - 1).spanXM())
                .isCloseTo(room().shell().lengthM() - 5, within(PIXEL_M));
        hand.click(room().shell().lengthM() - 0.1, 3);
        var clicked = room().racks().get(room().racks().size() - 1);
        assertThat(clicked.xM() + clicked.spanXM())
                .isLessThanOrEqualTo(room().shell().lengthM() + 1e-9);
    }

    @Test
    void theRoomStaysUnderTheHandThoughTheLegendHasMoreToExplain() {
        bench = new Bench(folder, "starting-out"); // no pipe yet: with it come bubbles and teeth
        hand = new RoomHand(bench);
        var before = bench.pane().center().room().viewport();
        hand.key("P");
        hand.click(0.5, 0.5);
        hand.move(2, 0.5);
        assertThat(bench.desk().plan().orElseThrow().room().runs()).isNotEmpty();
        assertThat(bench.pane().center().room().viewport()).isEqualTo(before);
    }

    @Test
    void withShiftALegGoesStraightAlongTheRoom() {
        hand.key("P");
        hand.click(4.2, 2.6);
        hand.clickStraight(5.3, 2.9);
        hand.key("ENTER");
        Run drawn = room().runs().get(room().runs().size() - 1);
        assertThat(drawn.points().get(1).yM()).isEqualTo(drawn.points().get(0).yM());
        assertThat(drawn.lengthM()).isCloseTo(1.1, within(2 * PIXEL_M));
    }

    @Test
    void aStandbyIsAddedWhereItIsPutAndWhoListensSitsWhereHeIsPut() {
        int standbys = room().blowers(Blower.Role.STANDBY).size();
        hand.key("B");
        JComboBox<?> kind = bench.part(JComboBox.class, "Kind of machine");
        kind.setSelectedItem(itemOf(kind, "a standby"));
        hand.click(4.2, 2.6);
        assertThat(room().blowers(Blower.Role.STANDBY)).hasSize(standbys + 1);
        kind.setSelectedItem(itemOf(kind, "where you sit and listen"));
        hand.click(5.2, 2.9);
        assertThat(room().listener().orElseThrow().place().xM()).isCloseTo(5.2, within(PIXEL_M));
        assertThat(undo()).isEqualTo("Move the listener");
    }

    private static Object itemOf(JComboBox<?> box, String words) {
        return IntStream.range(0, box.getItemCount())
                .mapToObj(box::getItemAt)
                .filter(item -> item.toString().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theGhostOfAMachineGoesWithThePointer() {
        hand.key("B");
        hand.move(4, 3);
        assertThat(hand.tool().sketch().strokes()).isNotEmpty();
        hand.goAway();
        assertThat(hand.tool().sketch()).isEqualTo(Sketch.NOTHING);
    }
}
