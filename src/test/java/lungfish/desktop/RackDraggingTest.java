package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.InputEvent;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.Outlet;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a drag does on the front of a rack. Places are in metres: along the rack, and down the page, so that a height is
 * negative. {@link FrontBench} tells what stands where.
 */
final class RackDraggingTest {
    private static final int FREE = InputEvent.ALT_DOWN_MASK;

    @TempDir
    private Path folder;

    private FrontBench bench = new FrontBench(Path.of(""));

    @BeforeEach
    void theGarageIsOpen() {
        bench = new FrontBench(folder);
    }

    @Test
    void aTankIsDraggedAlongItsShelf() {
        bench.open("B");
        bench.hand().drag(0.7, -0.3, 0.9, -0.3, FREE);
        assertThat(bench.tank("B-1-2").xM()).isEqualTo(0.64); // kept only when it is let go
        assertThat(bench.desk().seen()).isNotEqualTo(bench.desk().room());
        bench.hand().release(0.9, -0.3, FREE);
        assertThat(bench.tank("B-1-2").xM()).isCloseTo(0.84, within(FrontBench.PIXEL_M));
        assertThat(bench.undo()).startsWith("Move ");
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-1-2"))));
        bench.run(UndoEdit.class);
        assertThat(bench.tank("B-1-2").xM()).isEqualTo(0.64);
    }

    @Test
    void nearTheEndOfTheRackATankIsDrawnToItAndSaysSo() {
        bench.open("B");
        bench.hand().drag(0.7, -0.3, 0.7 + 0.475, -0.3, 0); // to 1.115; 1.72 less the 0.6 of the tank is 1.12
        Sketch sketch = bench.sketch();
        assertThat(sketch.strokes())
                .filteredOn(Sketch.Rest.class::isInstance)
                .extracting(stroke -> ((Sketch.Rest) stroke).words())
                .containsExactly("rack's end");
        bench.hand().release(0.7 + 0.475, -0.3, 0);
        assertThat(bench.tank("B-1-2").xM()).isEqualTo(1.12);
    }

    @Test
    void aTankThatWouldOverlapIsToldBesideTheHandAndStays() {
        bench.open("B");
        bench.hand().drag(0.7, -0.3, 0.5, -0.3, FREE);
        Sketch.Note note = bench.sketch().note().orElseThrow();
        assertThat(note.refused()).isTrue();
        assertThat(note.words()).contains("would overlap by");
        bench.hand().release(0.5, -0.3, FREE);
        assertThat(bench.tank("B-1-2").xM()).isEqualTo(0.64);
        assertThat(bench.undo()).isEmpty();
    }

    @Test
    void aTankIsDraggedToAnotherShelf() {
        bench.open("C");
        bench.hand().dragAndDrop(1.0, -0.7, 1.0, -1.25, FREE); // from the shelf at 0.6 m to the one at 1.15 m
        assertThat(bench.ids("C-1")).containsExactly("C-1-1", "C-1-2", "C-1-3");
        assertThat(bench.ids("C-2")).containsExactly("C-2-1", "C-2-2", "C-2-3", "C-2-4", "C-1-4");
        assertThat(bench.tank("C-1-4").xM()).isCloseTo(0.98, within(FrontBench.PIXEL_M));
    }

    @Test
    void withTheMenuKeyACopyGoesAlongAndIsChosen() {
        bench.open("C");
        int keys = FREE | Act.menuMask();
        bench.hand().drag(0.55, -1.2, 0.95, -1.2, keys);
        assertThat(bench.pane()
                        .center()
                        .belt()
                        .inHand()
                        .sketch()
                        .note()
                        .orElseThrow()
                        .words())
                .startsWith("+1 outlet");
        bench.hand().release(0.95, -1.2, keys);
        assertThat(bench.tank("C-2-4").xM()).isEqualTo(0.5);
        Tank copy = bench.shelf("C-2").tanks().get(4);
        assertThat(copy.xM()).isCloseTo(0.9, within(FrontBench.PIXEL_M));
        assertThat(copy.outside()).isEqualTo(bench.tank("C-2-4").outside());
        assertThat(copy.outlets())
                .extracting(Outlet::device)
                .containsExactly(bench.seat("C-2-4-a").outlet().device());
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.tank(copy.id())));
        assertThat(bench.undo()).startsWith("Copy ");
    }

    @Test
    void aDeviceIsDraggedToAnotherDepthWhichIsToldBesideTheHand() {
        bench.open("B");
        double beforeM = bench.depthM("B-1-1-a");
        Rectangle2D at = bench.where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        bench.hand().drag(at.getX(), at.getY(), at.getX(), at.getY() - 0.1, FREE);
        assertThat(bench.pane()
                        .center()
                        .belt()
                        .inHand()
                        .sketch()
                        .note()
                        .orElseThrow()
                        .words())
                .contains(" deep · to spare ");
        bench.hand().release(at.getX(), at.getY() - 0.1, FREE);
        assertThat(bench.depthM("B-1-1-a")).isCloseTo(beforeM - 0.1, within(FrontBench.PIXEL_M));
        assertThat(bench.undo()).isEqualTo("Set the depth of outlet B-1-1-a");
    }

    @Test
    void aDeviceStaysInTheWater() {
        bench.open("B");
        Rectangle2D at = bench.where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        bench.hand().dragAndDrop(at.getX(), at.getY(), at.getX(), at.getY() + 0.6, FREE);
        assertThat(bench.depthM("B-1-1-a")).isEqualTo(bench.tank("B-1-1").waterDepthM());
    }

    @Test
    void aDeviceIsDraggedIntoAnotherTank() {
        bench.open("B");
        Rectangle2D at = bench.where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        bench.hand().dragAndDrop(at.getX(), at.getY(), 0.8, -0.2 - 0.31 + 0.25, FREE); // 0.25 m below the water line
        assertThat(bench.tank("B-1-1").outlets()).isEmpty();
        assertThat(bench.seat("B-1-1-a").tank().id()).isEqualTo(new TankId("B-1-2"));
        assertThat(bench.depthM("B-1-1-a")).isCloseTo(0.25, within(FrontBench.PIXEL_M));
    }

    @Test
    void aShelfIsDraggedUpWithItsTanks() {
        bench.open("B");
        bench.hand().dragAndDrop(1.66, -1.49, 1.66, -1.6, FREE);
        assertThat(bench.shelf("B-3").heightM()).isCloseTo(1.61, within(FrontBench.PIXEL_M));
        assertThat(bench.ids("B-3")).hasSize(4);
        assertThat(bench.undo()).startsWith("Move a shelf of rack");
    }

    @Test
    void aFrameChoosesTheTanksThatItTouches() {
        bench.open("B");
        bench.hand().dragAndDrop(-0.05, -0.15, 0.7, -0.3, FREE);
        assertThat(bench.chosen().ids(Part.Kind.TANK, TankId::new))
                .containsExactly(new TankId("B-1-1"), new TankId("B-1-2"));
    }
}
