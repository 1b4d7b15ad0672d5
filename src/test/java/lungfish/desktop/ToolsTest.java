package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.InputEvent;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Blower;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tools on the room from above, by events as the mouse sends them. Places are in metres of the room. */
final class ToolsTest {
    /** Half a pixel of a room drawn at some 60 pixels a metre. */
    private static final double PIXEL_M = 0.02;

    /** Alt keeps it off grid and guides. */
    private static final int FREE = InputEvent.ALT_DOWN_MASK;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");
    private RoomCanvas canvas = bench.pane().center().room();

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
        canvas = bench.pane().center().room();
        canvas.setSize(900, 700);
        canvas.fit();
    }

    private Hand hand() {
        return new Hand(canvas);
    }

    private Rack first() {
        return bench.desk().room().racks().get(0);
    }

    private double midXM(Rack rack) {
        return rack.xM() + rack.spanXM() / 2;
    }

    private double midYM(Rack rack) {
        return rack.yM() + rack.spanYM() / 2;
    }

    @Test
    void aRackIsDraggedAndThePlanFollowsBeforeItIsLetGo() {
        Rack before = first();
        hand().drag(midXM(before), midYM(before), midXM(before) + 0.4, midYM(before) + 0.3, FREE);
        assertThat(bench.desk().room().racks().get(0)).isEqualTo(before);
        Rack tried = bench.desk().plan().orElseThrow().room().racks().get(0);
        assertThat(tried.xM()).isCloseTo(before.xM() + 0.4, within(PIXEL_M));

        hand().release(midXM(before) + 0.4, midYM(before) + 0.3, FREE);
        assertThat(first()).isEqualTo(tried);
        assertThat(bench.desk().history().toUndo())
                .hasValueSatisfying(done -> assertThat(done).startsWith("Move rack"));
        assertThat(bench.pane().view().selection()).isEqualTo(Selection.of(Part.rack(before.id())));
    }

    @Test
    void theRoomStaysWhereItIsWhileSomethingIsDraggedBeyondItsWalls() {
        Rack before = first();
        Point2D corner = canvas.viewport().px(0, 0);
        hand().drag(
                        midXM(before),
                        midYM(before),
                        midXM(before) - before.spanXM() / 2 - before.xM(),
                        midYM(before),
                        FREE);
        assertThat(bench.desk().plan().orElseThrow().room().racks().get(0).xM()).isNegative();
        assertThat(canvas.viewport().px(0, 0)).isEqualTo(corner);
    }

    @Test
    void escapeLeavesTheRackWhereItWas() {
        Rack before = first();
        hand().drag(midXM(before), midYM(before), midXM(before) + 0.4, midYM(before), FREE);
        hand().key("ESCAPE");
        hand().release(midXM(before) + 0.4, midYM(before), FREE);
        assertThat(first()).isEqualTo(before);
        assertThat(bench.desk().plan().orElseThrow().room().racks().get(0)).isEqualTo(before);
        assertThat(bench.desk().history().toUndo()).isEmpty();
    }

    @Test
    void whatCannotBeDoneIsToldBesideTheHandAndNotDone() {
        Rack before = first();
        hand().drag(midXM(before), midYM(before), midXM(before) - 40, midYM(before), FREE);
        Sketch.Note note = bench.pane().center().belt().inHand().sketch().note().orElseThrow();
        assertThat(note.refused()).isTrue();
        assertThat(note.words()).contains("outside");
        hand().release(midXM(before) - 40, midYM(before), FREE);
        assertThat(first()).isEqualTo(before);
    }

    @Test
    void aRackIsDrawnWithTheLetterAndADragAndIsChosenThen() {
        int racks = bench.desk().room().racks().size();
        double widthM = bench.desk().room().shell().widthM();
        double lengthM = bench.desk().room().shell().lengthM();
        hand().key("R");
        hand().drag(lengthM / 2 - 0.7, widthM / 2 - 0.3, lengthM / 2 + 0.7, widthM / 2 + 0.2, FREE);
        hand().release(lengthM / 2 + 0.7, widthM / 2 + 0.2, FREE);
        assertThat(bench.desk().room().racks()).hasSize(racks + 1);
        Rack drawn = bench.desk().room().racks().get(racks);
        assertThat(drawn.spanXM()).isCloseTo(1.4, within(PIXEL_M));
        assertThat(drawn.tanks()).isNotEmpty();
        assertThat(bench.pane().view().selection().ids(Part.Kind.RACK, RackId::new))
                .containsExactly(drawn.id());
    }

    @Test
    void aPipeWhoseEndMeetsItsStartIsALoop() {
        int runs = bench.desk().room().runs().size();
        hand().key("P");
        hand().click(1.0, 1.0, FREE);
        hand().click(2.0, 1.0, FREE);
        hand().click(2.0, 2.0, FREE);
        hand().press(1.0, 1.0, 0);
        assertThat(bench.desk().room().runs()).hasSize(runs + 1);
        Run loop = bench.desk().room().runs().get(runs);
        assertThat(loop.closed()).isTrue();
        assertThat(loop.points()).hasSize(3);
    }

    @Test
    void theBlowerGoesWhereItIsPut() {
        hand().key("B");
        hand().click(1.5, 1.2, FREE);
        Blower blower = bench.desk().room().blowers(Blower.Role.PLANNED).get(0);
        assertThat(blower.siting().place().orElseThrow().xM()).isCloseTo(1.5, within(PIXEL_M));
        assertThat(bench.desk().room().blowers(Blower.Role.PLANNED)).hasSize(1);
    }

    @Test
    void altAndAnArrowMoveByAStepOfTheGrid() {
        Rack before = first();
        bench.pane().view().select(Selection.of(Part.rack(before.id())));
        hand().key("alt RIGHT"); // the garage is in metric units: the grid is 5 cm
        assertThat(first().xM()).isCloseTo(before.xM() + 0.05, within(1e-9));
        hand().key("shift alt LEFT");
        assertThat(first().xM()).isCloseTo(before.xM() + 0.04, within(1e-9));
    }

    @Test
    void aFrameChoosesWhatItTouches() {
        double lengthM = bench.desk().room().shell().lengthM();
        double widthM = bench.desk().room().shell().widthM();
        hand().drag(-0.4, -0.4, lengthM + 0.2, widthM + 0.2, FREE);
        hand().release(lengthM + 0.2, widthM + 0.2, FREE);
        assertThat(bench.pane().view().selection().ids(Part.Kind.RACK, RackId::new))
                .containsExactlyElementsOf(
                        bench.desk().room().racks().stream().map(Rack::id).toList());
    }

    @Test
    void escapePutsAToolDown() {
        hand().key("M");
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Measure");
        hand().key("ESCAPE");
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Choose");
    }

    @Test
    void whatIsDeletedComesBackWithUndo() {
        Rack gone = first();
        bench.pane().view().select(Selection.of(Part.rack(gone.id())));
        bench.pane().acts().all().stream()
                .filter(act -> act.name().equals("Delete"))
                .forEach(Act::act);
        assertThat(bench.desk().room().racks()).doesNotContain(gone);
        assertThat(bench.pane().view().selection().isEmpty()).isTrue();
        bench.act(UndoEdit.class);
        assertThat(bench.desk().room().racks()).contains(gone);
    }
}
