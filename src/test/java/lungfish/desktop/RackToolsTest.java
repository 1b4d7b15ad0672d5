package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.InputEvent;
import java.nio.file.Path;
import javax.swing.JComboBox;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Outlet;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the tools put down on the front of a rack. Places are in metres: along the rack, and down the page, so that a height is
 * negative. {@link FrontBench} tells what stands where.
 */
final class RackToolsTest {
    private static final int FREE = InputEvent.ALT_DOWN_MASK;

    @TempDir
    private Path folder;

    private FrontBench bench = new FrontBench(Path.of(""));

    @BeforeEach
    void theGarageIsOpen() {
        bench = new FrontBench(folder);
    }

    @Test
    void aShelfIsAddedWhereItIsClickedAndChosenThen() {
        bench.open("B");
        bench.hand().key("S");
        bench.hand().click(0.9, -0.65, FREE);
        Shelf added = bench.desk().room().racks().get(1).shelves().get(1);
        assertThat(added.heightM()).isCloseTo(0.65, within(FrontBench.PIXEL_M));
        assertThat(added.tanks()).isEmpty();
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.shelf(added.id())));
        assertThat(bench.undo()).startsWith("Add a shelf to rack");
    }

    @Test
    void aShelfIsDrawnToTheStepOfTheOthers() {
        bench.open("A"); // shelves at 0.35, 0.95 and 1.5 m: the upper step is 0.55 m
        bench.hand().key("S");
        bench.hand().click(0.9, -0.395, 0); // 0.95 less 0.55 is 0.4
        assertThat(bench.desk().room().racks().get(0).shelves().get(1).heightM())
                .isEqualTo(0.4);
    }

    @Test
    void aTankOfACommonSizeIsPutWhereItIsClicked() {
        bench.open("B");
        bench.hand().key("T");
        bench.say("Tank size", "40 × 25 × 25 cm, 25 L");
        bench.say("Device in it", "Small sponge filter");
        bench.hand().click(1.48, -0.3, FREE);
        Tank added = bench.shelf("B-1").tanks().get(2);
        assertThat(added.xM()).isCloseTo(1.28, within(FrontBench.PIXEL_M));
        assertThat(added.outside()).isEqualTo(new Tank.Size(0.4, 0.25, 0.25));
        assertThat(added.waterDepthM()).isEqualTo(0.22);
        assertThat(added.outlets()).extracting(Outlet::device).containsExactly("sponge-small");
        assertThat(bench.undo()).isEqualTo("Add a tank");
    }

    @Test
    void aTankOfOnesOwnSizeIsFilledNearlyToItsRim() {
        bench.open("B");
        bench.hand().key("T");
        bench.say("Tank size", "own size");
        bench.part(QuantityField.class, "Length of the tank").setText("12 in");
        bench.part(QuantityField.class, "Length of the tank").take();
        bench.hand().click(1.48, -0.3, FREE);
        Tank added = bench.shelf("B-1").tanks().get(2);
        assertThat(added.outside()).isEqualTo(new Tank.Size(0.3048, 0.3, 0.36));
        assertThat(added.waterDepthM()).isCloseTo(0.324, within(1e-9)); // a tenth of the height is left: 0.9 x 0.36 m
    }

    @Test
    void sizesOfTheReadersOwnTradeComeFirst() {
        bench.open("B");
        bench.hand().key("T");
        JComboBox<?> sizes = bench.part(JComboBox.class, "Tank size");
        assertThat(sizes.getItemAt(0).toString()).contains("cm");
        assertThat(String.valueOf(sizes.getSelectedItem())).contains("cm");
        bench.run(SwitchUnits.class);
        assertThat(sizes.getItemAt(0).toString()).contains("gal");
        assertThat(String.valueOf(sizes.getSelectedItem())).contains("gal");
    }

    @Test
    void theSizeThatWasChosenStaysWhenUnitsAreSwitched() {
        bench.open("B");
        bench.hand().key("T");
        bench.say("Tank size", "30 × 20 × 20 cm, 12 L");
        bench.run(SwitchUnits.class);
        assertThat(String.valueOf(bench.part(JComboBox.class, "Tank size").getSelectedItem()))
                .isEqualTo("30 × 20 × 20 cm, 12 L");
    }

    @Test
    void enterPutsATankIntoTheNextGapThatThereIs() {
        bench.open("C"); // only the upper shelf has a gap
        bench.hand().key("T");
        bench.say("Tank size", "30 × 20 × 20 cm, 12 L");
        bench.hand().key("ENTER");
        assertThat(bench.ids("C-2")).hasSize(5);
        assertThat(bench.shelf("C-2").tanks().get(4).xM())
                .isCloseTo(0.82, within(1e-9)); // 2 cm beside the one that ends at 0.8
    }

    @Test
    void aDeviceHangsAtTheDepthWhereItIsClicked() {
        bench.open("B");
        bench.hand().key("D");
        bench.say("Device", "Air stone, fine ceramic");
        bench.hand().click(0.8, -0.2 - 0.31 + 0.15, FREE);
        assertThat(bench.tank("B-1-2").outlets()).hasSize(2);
        Outlet added = bench.tank("B-1-2").outlets().get(1);
        assertThat(added.device()).isEqualTo("stone-fine");
        assertThat(added.depthM().orElseThrow()).isCloseTo(0.15, within(FrontBench.PIXEL_M));
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.outlet(added.id())));
        assertThat(bench.undo()).isEqualTo("Add 1 outlet");
    }

    @Test
    void whatAToolWouldDoIsShownBeforeTheButtonIsDown() {
        bench.open("B");
        bench.hand().key("S");
        bench.hand().move(0.9, -0.65);
        Sketch sketch = bench.sketch();
        assertThat(sketch.note().orElseThrow().words()).isEqualTo("65 cm above the floor");
        assertThat(sketch.strokes()).filteredOn(Sketch.Length.class::isInstance).hasSizeGreaterThan(1);
        assertThat(bench.desk().isTrying()).isFalse();
    }

    @Test
    void escapeLeavesWhatIsTriedThenTheToolThenTheRack() {
        bench.open("B");
        bench.hand().key("S");
        bench.hand().drag(0.9, -0.65, 0.9, -0.7, FREE);
        bench.hand().key("ESCAPE");
        assertThat(bench.desk().seen()).isEqualTo(bench.desk().room());
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Shelf");
        bench.hand().key("ESCAPE");
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Choose");
        assertThat(bench.pane().center().isRackOpen()).isTrue();
        bench.hand().key("ESCAPE");
        assertThat(bench.pane().center().isRackOpen()).isFalse();
    }
}
