package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.InputEvent;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComboBox;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Seat;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The tools on the front of a rack, by events as the mouse sends them. Places are in metres: along the rack, and down the
 * page, so that a height is negative. Rack B of the garage is 1.72 m wide; on its lowest shelf, 0.2 m high, stand B-1-1 from
 * 0.02 to 0.62 m and B-1-2 from 0.64 to 1.24 m. The upper shelf of rack C is free from 0.8 to 1.3 m.
 */
final class RackToolsTest {
    /** Half a pixel of a rack drawn at some 300 pixels a metre. */
    private static final double PIXEL_M = 0.004;

    private static final int FREE = InputEvent.ALT_DOWN_MASK;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");
    private Hand hand = new Hand(bench.pane().center().rack());

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
        hand = new Hand(bench.pane().center().rack());
    }

    private void open(String rack) {
        bench.pane().center().openRack(new RackId(rack));
        bench.pane().center().rack().setSize(900, 700);
        bench.pane().center().rack().fit();
    }

    private Tank tank(String id) {
        return bench.desk().room().racks().stream()
                .flatMap(Rack::tanks)
                .filter(each -> each.id().equals(new TankId(id)))
                .findFirst()
                .orElseThrow();
    }

    private Shelf shelf(String id) {
        return bench.desk().room().racks().stream()
                .flatMap(rack -> rack.shelves().stream())
                .filter(each -> each.id().equals(new ShelfId(id)))
                .findFirst()
                .orElseThrow();
    }

    private Seat seat(String outlet) {
        return bench.desk().room().seats().stream()
                .filter(each -> each.outlet().id().equals(new OutletId(outlet)))
                .findFirst()
                .orElseThrow();
    }

    private Rectangle2D where(PartId part) {
        return bench.pane().center().rack().whereM(part).orElseThrow();
    }

    private double depthM(String outlet) {
        return seat(outlet).outlet().depthM().orElseThrow();
    }

    private List<String> ids(String shelf) {
        return shelf(shelf).tanks().stream().map(tank -> tank.id().text()).toList();
    }

    private String undo() {
        return bench.desk().history().toUndo().orElse("");
    }

    private Selection chosen() {
        return bench.pane().view().selection();
    }

    @Test
    void aTankIsDraggedAlongItsShelf() {
        open("B");
        hand.drag(0.7, -0.3, 0.9, -0.3, FREE);
        assertThat(tank("B-1-2").xM()).isEqualTo(0.64); // kept only when it is let go
        assertThat(bench.desk().seen()).isNotEqualTo(bench.desk().room());
        hand.release(0.9, -0.3, FREE);
        assertThat(tank("B-1-2").xM()).isCloseTo(0.84, within(PIXEL_M));
        assertThat(undo()).startsWith("Move ");
        assertThat(chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-1-2"))));
        bench.act(UndoEdit.class);
        assertThat(tank("B-1-2").xM()).isEqualTo(0.64);
    }

    @Test
    void nearTheEndOfTheRackATankIsDrawnToItAndSaysSo() {
        open("B");
        hand.drag(0.7, -0.3, 0.7 + 0.475, -0.3, 0); // to 1.115; 1.72 less the 0.6 of the tank is 1.12
        Sketch sketch = bench.pane().center().belt().inHand().sketch();
        assertThat(sketch.strokes())
                .filteredOn(Sketch.Rest.class::isInstance)
                .extracting(stroke -> ((Sketch.Rest) stroke).words())
                .containsExactly("rack's end");
        hand.release(0.7 + 0.475, -0.3, 0);
        assertThat(tank("B-1-2").xM()).isEqualTo(1.12);
    }

    @Test
    void aTankThatWouldOverlapIsToldBesideTheHandAndStays() {
        open("B");
        hand.drag(0.7, -0.3, 0.5, -0.3, FREE);
        Sketch.Note note = bench.pane().center().belt().inHand().sketch().note().orElseThrow();
        assertThat(note.refused()).isTrue();
        assertThat(note.words()).contains("would overlap by");
        hand.release(0.5, -0.3, FREE);
        assertThat(tank("B-1-2").xM()).isEqualTo(0.64);
        assertThat(undo()).isEmpty();
    }

    @Test
    void aTankIsDraggedToAnotherShelf() {
        open("C");
        hand.dragAndDrop(1.0, -0.7, 1.0, -1.25, FREE); // from the shelf at 0.6 m to the one at 1.15 m
        assertThat(ids("C-1")).containsExactly("C-1-1", "C-1-2", "C-1-3");
        assertThat(ids("C-2")).containsExactly("C-2-1", "C-2-2", "C-2-3", "C-2-4", "C-1-4");
        assertThat(tank("C-1-4").xM()).isCloseTo(0.98, within(PIXEL_M));
    }

    @Test
    void withTheMenuKeyACopyGoesAlongAndIsChosen() {
        open("C");
        int keys = FREE | Act.menuMask();
        hand.drag(0.55, -1.2, 0.95, -1.2, keys);
        assertThat(bench.pane()
                        .center()
                        .belt()
                        .inHand()
                        .sketch()
                        .note()
                        .orElseThrow()
                        .words())
                .startsWith("+1 outlet");
        hand.release(0.95, -1.2, keys);
        assertThat(tank("C-2-4").xM()).isEqualTo(0.5);
        Tank copy = shelf("C-2").tanks().get(4);
        assertThat(copy.xM()).isCloseTo(0.9, within(PIXEL_M));
        assertThat(copy.outside()).isEqualTo(tank("C-2-4").outside());
        assertThat(copy.outlets())
                .extracting(Outlet::device)
                .containsExactly(seat("C-2-4-a").outlet().device());
        assertThat(chosen()).isEqualTo(Selection.of(Part.tank(copy.id())));
        assertThat(undo()).startsWith("Copy ");
    }

    @Test
    void aDeviceIsDraggedToAnotherDepthWhichIsToldBesideTheHand() {
        open("B");
        double beforeM = depthM("B-1-1-a");
        Rectangle2D at = where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        hand.drag(at.getX(), at.getY(), at.getX(), at.getY() - 0.1, FREE);
        assertThat(bench.pane()
                        .center()
                        .belt()
                        .inHand()
                        .sketch()
                        .note()
                        .orElseThrow()
                        .words())
                .contains(" deep · to spare ");
        hand.release(at.getX(), at.getY() - 0.1, FREE);
        assertThat(depthM("B-1-1-a")).isCloseTo(beforeM - 0.1, within(PIXEL_M));
        assertThat(undo()).isEqualTo("Set the depth of outlet B-1-1-a");
    }

    @Test
    void aDeviceStaysInTheWater() {
        open("B");
        Rectangle2D at = where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        hand.dragAndDrop(at.getX(), at.getY(), at.getX(), at.getY() + 0.6, FREE);
        assertThat(depthM("B-1-1-a")).isEqualTo(tank("B-1-1").waterDepthM());
    }

    @Test
    void aDeviceIsDraggedIntoAnotherTank() {
        open("B");
        Rectangle2D at = where(new PartId(PartId.Kind.OUTLET, "B-1-1-a"));
        hand.dragAndDrop(at.getX(), at.getY(), 0.8, -0.2 - 0.31 + 0.25, FREE); // 0.25 m below the water line
        assertThat(tank("B-1-1").outlets()).isEmpty();
        assertThat(seat("B-1-1-a").tank().id()).isEqualTo(new TankId("B-1-2"));
        assertThat(depthM("B-1-1-a")).isCloseTo(0.25, within(PIXEL_M));
    }

    @Test
    void aShelfIsDraggedUpWithItsTanks() {
        open("B");
        hand.dragAndDrop(1.66, -1.49, 1.66, -1.6, FREE);
        assertThat(shelf("B-3").heightM()).isCloseTo(1.61, within(PIXEL_M));
        assertThat(ids("B-3")).hasSize(4);
        assertThat(undo()).startsWith("Move a shelf of rack");
    }

    @Test
    void aFrameChoosesTheTanksThatItTouches() {
        open("B");
        hand.dragAndDrop(-0.05, -0.15, 0.7, -0.3, FREE);
        assertThat(chosen().ids(Part.Kind.TANK, TankId::new)).containsExactly(new TankId("B-1-1"), new TankId("B-1-2"));
    }

    @Test
    void arrowsWalkFromTankToTankAndInAndOut() {
        open("B");
        bench.pane().view().select(Selection.of(Part.tank(new TankId("B-1-1"))));
        hand.key("RIGHT");
        assertThat(chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-1-2"))));
        hand.key("UP"); // its middle is at 0.94 m: nearest is that from 0.86 to 1.26 m
        assertThat(chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-2-3"))));
        hand.key("ctrl DOWN");
        assertThat(chosen()).isEqualTo(Selection.of(Part.outlet(new OutletId("B-2-3-a"))));
        hand.key("LEFT");
        assertThat(chosen()).isEqualTo(Selection.of(Part.outlet(new OutletId("B-2-2-a"))));
        hand.key("ctrl UP");
        hand.key("ctrl UP");
        assertThat(chosen()).isEqualTo(Selection.of(Part.shelf(new ShelfId("B-2"))));
    }

    @Test
    void altAndAnArrowMoveWhateverIsChosen() {
        open("B");
        bench.pane().view().select(Selection.of(Part.tank(new TankId("B-1-2"))));
        hand.key("alt RIGHT"); // in metric units 5 cm
        assertThat(tank("B-1-2").xM()).isCloseTo(0.69, within(1e-9));
        double beforeM = depthM("B-1-1-a");
        bench.pane().view().select(Selection.of(Part.outlet(new OutletId("B-1-1-a"))));
        hand.key("alt UP"); // 1 cm
        assertThat(depthM("B-1-1-a")).isCloseTo(beforeM - 0.01, within(1e-9));
        hand.key("alt RIGHT"); // into the tank beside
        assertThat(seat("B-1-1-a").tank().id()).isEqualTo(new TankId("B-1-2"));
        bench.pane().view().select(Selection.of(Part.shelf(new ShelfId("B-3"))));
        hand.key("shift alt UP"); // a fifth of 5 cm
        assertThat(shelf("B-3").heightM()).isCloseTo(1.51, within(1e-9));
    }

    @Test
    void pageDownLeadsToTheNextRackAndEscapeToTheRoom() {
        open("B");
        hand.key("PAGE_DOWN");
        assertThat(bench.pane().center().rack().title()).isEqualTo("Front of Fry rack");
        hand.key("PAGE_DOWN");
        assertThat(bench.pane().center().rack().title()).isEqualTo("Front of Left of the door");
        hand.key("ESCAPE");
        assertThat(bench.pane().center().isRackOpen()).isFalse();
    }

    @Test
    void theDrawingSaysAloudWhatIsChosenOnIt() {
        open("B");
        bench.pane().view().select(Selection.of(Part.shelf(new ShelfId("B-3"))));
        assertThat(bench.pane().center().rack().getAccessibleContext().getAccessibleName())
                .isEqualTo(
                        "Front of Beside the freezer: shelf 3 of Beside the freezer · 150 cm above the floor · 4 tanks");
    }

    private void say(String name, String item) {
        JComboBox<?> choice = bench.part(JComboBox.class, name);
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (choice.getItemAt(i).toString().equals(item)) {
                choice.setSelectedIndex(i);
                return;
            }
        }
        throw new AssertionError(name + " does not offer " + item);
    }

    @Test
    void aShelfIsAddedWhereItIsClickedAndChosenThen() {
        open("B");
        hand.key("S");
        hand.click(0.9, -0.65, FREE);
        Shelf added = bench.desk().room().racks().get(1).shelves().get(1);
        assertThat(added.heightM()).isCloseTo(0.65, within(PIXEL_M));
        assertThat(added.tanks()).isEmpty();
        assertThat(chosen()).isEqualTo(Selection.of(Part.shelf(added.id())));
        assertThat(undo()).startsWith("Add a shelf to rack");
    }

    @Test
    void aShelfIsDrawnToTheStepOfTheOthers() {
        open("A"); // shelves at 0.35, 0.95 and 1.5 m: the upper step is 0.55 m
        hand.key("S");
        hand.click(0.9, -0.395, 0); // 0.95 less 0.55 is 0.4
        assertThat(bench.desk().room().racks().get(0).shelves().get(1).heightM())
                .isEqualTo(0.4);
    }

    @Test
    void aTankOfACommonSizeIsPutWhereItIsClicked() {
        open("B");
        hand.key("T");
        say("Tank size", "40 × 25 × 25 cm, 25 L");
        say("Device in it", "Small sponge filter");
        hand.click(1.48, -0.3, FREE);
        Tank added = shelf("B-1").tanks().get(2);
        assertThat(added.xM()).isCloseTo(1.28, within(PIXEL_M));
        assertThat(added.outside()).isEqualTo(new Tank.Size(0.4, 0.25, 0.25));
        assertThat(added.waterDepthM()).isEqualTo(0.22);
        assertThat(added.outlets()).extracting(Outlet::device).containsExactly("sponge-small");
        assertThat(undo()).isEqualTo("Add a tank");
    }

    @Test
    void aTankOfOnesOwnSizeIsFilledNearlyToItsRim() {
        open("B");
        hand.key("T");
        say("Tank size", "own size");
        bench.part(QuantityField.class, "Length of the tank").setText("12 in");
        bench.part(QuantityField.class, "Length of the tank").take();
        hand.click(1.48, -0.3, FREE);
        Tank added = shelf("B-1").tanks().get(2);
        assertThat(added.outside()).isEqualTo(new Tank.Size(0.3048, 0.3, 0.36));
        assertThat(added.waterDepthM()).isCloseTo(0.32, within(1e-9)); // 4 cm below the rim
    }

    @Test
    void sizesOfTheReadersOwnTradeComeFirst() {
        open("B");
        hand.key("T");
        JComboBox<?> sizes = bench.part(JComboBox.class, "Tank size");
        assertThat(sizes.getItemAt(0).toString()).contains("cm");
        bench.act(SwitchUnits.class);
        assertThat(sizes.getItemAt(0).toString()).contains("gal");
    }

    @Test
    void enterPutsATankIntoTheNextGapThatThereIs() {
        open("C"); // only the upper shelf has a gap
        hand.key("T");
        say("Tank size", "30 × 20 × 20 cm, 12 L");
        hand.key("ENTER");
        assertThat(ids("C-2")).hasSize(5);
        assertThat(shelf("C-2").tanks().get(4).xM())
                .isCloseTo(0.82, within(1e-9)); // 2 cm beside the one that ends at 0.8
    }

    @Test
    void aDeviceHangsAtTheDepthWhereItIsClicked() {
        open("B");
        hand.key("D");
        say("Device", "Air stone, fine ceramic");
        hand.click(0.8, -0.2 - 0.31 + 0.15, FREE);
        assertThat(tank("B-1-2").outlets()).hasSize(2);
        Outlet added = tank("B-1-2").outlets().get(1);
        assertThat(added.device()).isEqualTo("stone-fine");
        assertThat(added.depthM().orElseThrow()).isCloseTo(0.15, within(PIXEL_M));
        assertThat(chosen()).isEqualTo(Selection.of(Part.outlet(added.id())));
        assertThat(undo()).isEqualTo("Add 1 outlet");
    }

    @Test
    void whatAToolWouldDoIsShownBeforeTheButtonIsDown() {
        open("B");
        hand.key("S");
        hand.move(0.9, -0.65);
        Sketch sketch = bench.pane().center().belt().inHand().sketch();
        assertThat(sketch.note().orElseThrow().words()).isEqualTo("65 cm above the floor");
        assertThat(sketch.strokes()).filteredOn(Sketch.Length.class::isInstance).hasSizeGreaterThan(1);
        assertThat(bench.desk().isTrying()).isFalse();
    }

    @Test
    void escapeLeavesWhatIsTriedThenTheToolThenTheRack() {
        open("B");
        hand.key("S");
        hand.drag(0.9, -0.65, 0.9, -0.7, FREE);
        hand.key("ESCAPE");
        assertThat(bench.desk().seen()).isEqualTo(bench.desk().room());
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Shelf");
        hand.key("ESCAPE");
        assertThat(bench.pane().center().belt().inHand().name()).isEqualTo("Choose");
        assertThat(bench.pane().center().isRackOpen()).isTrue();
        hand.key("ESCAPE");
        assertThat(bench.pane().center().isRackOpen()).isFalse();
    }
}
