package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Point;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.MenuElement;
import lungfish.drawing.Hit;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.OutletId;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.TankId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keys and menus do on the front of a rack; {@link FrontBench} tells what stands where. */
final class RackKeysTest {
    @TempDir
    private Path folder;

    private FrontBench bench = new FrontBench(Path.of(""));

    @BeforeEach
    void theGarageIsOpen() {
        bench = new FrontBench(folder);
    }

    @Test
    void arrowsWalkFromTankToTankAndInAndOut() {
        bench.open("B");
        bench.choose(Part.tank(new TankId("B-1-1")));
        bench.hand().key("RIGHT");
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-1-2"))));
        bench.hand().key("UP"); // its middle is at 0.94 m: nearest is that from 0.86 to 1.26 m
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-2-3"))));
        bench.hand().key("ctrl DOWN");
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.outlet(new OutletId("B-2-3-a"))));
        bench.hand().key("LEFT");
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.outlet(new OutletId("B-2-2-a"))));
        bench.hand().key("ctrl UP");
        bench.hand().key("ctrl UP");
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.shelf(new ShelfId("B-2"))));
    }

    @Test
    void altAndAnArrowMoveWhateverIsChosen() {
        bench.open("B");
        bench.choose(Part.tank(new TankId("B-1-2")));
        bench.hand().key("alt RIGHT"); // in metric units 5 cm
        assertThat(bench.tank("B-1-2").xM()).isCloseTo(0.69, within(1e-9));
        double beforeM = bench.depthM("B-1-1-a");
        bench.choose(Part.outlet(new OutletId("B-1-1-a")));
        bench.hand().key("alt UP"); // 1 cm
        assertThat(bench.depthM("B-1-1-a")).isCloseTo(beforeM - 0.01, within(1e-9));
        bench.hand().key("alt RIGHT"); // into the tank beside
        assertThat(bench.seat("B-1-1-a").tank().id()).isEqualTo(new TankId("B-1-2"));
        bench.choose(Part.shelf(new ShelfId("B-3")));
        bench.hand().key("shift alt UP"); // a fifth of 5 cm
        assertThat(bench.shelf("B-3").heightM()).isCloseTo(1.51, within(1e-9));
    }

    @Test
    void oneStepsFromRackToRackAndEscapeLeadsToTheRoom() {
        bench.open("B");
        bench.run(NextRack.class);
        assertThat(bench.canvas().title()).isEqualTo("Front of Fry rack");
        bench.run(NextRack.class);
        assertThat(bench.canvas().title()).isEqualTo("Front of Left of the door");
        bench.hand().key("ESCAPE");
        assertThat(bench.pane().center().isRackOpen()).isFalse();
    }

    @Test
    void theDrawingSaysAloudWhatIsChosenOnIt() {
        bench.open("B");
        bench.choose(Part.shelf(new ShelfId("B-3")));
        assertThat(bench.canvas().getAccessibleContext().getAccessibleName())
                .isEqualTo(
                        "Front of Beside the freezer: shelf 3 of Beside the freezer · 150 cm above the floor · 4 tanks");
    }

    @Test
    void theSameIsHungIntoEveryTankOfTheShelf() {
        bench.open("B");
        bench.choose(Part.tank(new TankId("B-1-2")));
        bench.hand().key("D");
        bench.hand().key("ENTER"); // one more in the chosen tank
        bench.choose(Part.outlet(bench.tank("B-1-2").outlets().get(1).id()));
        bench.act("Same for every tank on the shelf");
        assertThat(bench.tank("B-1-1").outlets()).hasSize(2);
        assertThat(bench.tank("B-2-1").outlets()).hasSize(1);
        bench.choose(Part.tank(new TankId("B-1-2")));
        bench.act("Same for every tank in the rack");
        assertThat(bench.desk().room().racks().get(1).tanks())
                .allMatch(tank -> tank.outlets().size() == 2);
        assertThat(bench.tank("C-1-1").outlets()).hasSize(1);
    }

    @Test
    void aCopiedOutletIsPastedIntoTheTankOfTheChosenOutlet() {
        bench.open("B");
        bench.choose(Part.outlet(new OutletId("B-1-1-a")));
        bench.act("Copy");
        bench.choose(Part.outlet(new OutletId("B-1-2-a")));
        bench.act("Paste");
        assertThat(bench.tank("B-1-2").outlets()).hasSize(2);
    }

    @Test
    void chooseAllMeansTheTanksOfTheRack() {
        bench.open("B");
        bench.run(ChooseAll.class);
        assertThat(bench.chosen().parts()).hasSize(10); // 2 + 4 + 4
        assertThat(bench.chosen().isOnly(Part.Kind.TANK)).isTrue();
    }

    @Test
    void theHeightOfAShelfIsTyped() {
        bench.open("B");
        bench.choose(Part.shelf(new ShelfId("B-2")));
        JTextField field = bench.part(JTextField.class, "Above the floor");
        field.setText("36 in");
        field.postActionEvent();
        assertThat(bench.shelf("B-2").heightM()).isCloseTo(36 * 0.0254, within(1e-9));
    }

    /** All that can be chosen in a menu, and in the menus within it. */
    private static Stream<Action> actions(MenuElement menu) {
        Stream<Action> own = menu instanceof JMenuItem item ? Stream.ofNullable(item.getAction()) : Stream.empty();
        return Stream.concat(own, Stream.of(menu.getSubElements()).flatMap(RackKeysTest::actions));
    }

    @Test
    void theMenuOnAPartHasWhatTheEditMenuHas() {
        Acts acts = bench.pane().acts();
        assertThat(actions(bench.canvas().getComponentPopupMenu()))
                .containsAll(acts.chosen())
                .containsAll(acts.inRack());
        assertThat(actions(bench.pane().center().room().getComponentPopupMenu()))
                .containsAll(acts.chosen())
                .containsAll(acts.arrange());
    }

    @Test
    void theMenuIsAboutWhatIsUnderThePointerAndOpensThereOrOnWhatIsChosen() {
        bench.open("B");
        RackCanvas canvas = bench.canvas();
        Point2D px = canvas.viewport().px(0.7, -0.3);
        Point at = new Point((int) px.getX(), (int) px.getY());
        assertThat(canvas.getPopupLocation(new MouseEvent(canvas, MouseEvent.MOUSE_PRESSED, 0, 0, at.x, at.y, 1, true)))
                .isEqualTo(at);
        assertThat(bench.chosen()).isEqualTo(Selection.of(Part.tank(new TankId("B-1-2"))));
        assertThat(canvas.hit(Objects.requireNonNull(canvas.getPopupLocation(null))))
                .map(Hit::part)
                .isPresent();
    }

    @Test
    void aShelfGoesWhereTheKeysAim() {
        bench.open("B"); // shelves at 0.2, 0.95 and 1.5 m
        bench.hand().key("S");
        bench.hand().key("DOWN"); // brings the cross, below the middle
        bench.hand().key("ctrl UP"); // the next board above is at 0.95 m
        assertThat(bench.canvas().aim().place().getY()).isEqualTo(-0.95);
        bench.hand().key("alt UP");
        bench.hand().key("ENTER"); // one step of the grid, 5 cm, above the board
        assertThat(bench.desk().room().racks().get(1).shelves())
                .extracting(Shelf::heightM)
                .containsExactly(0.2, 0.95, 1.0, 1.5);
    }

    @Test
    void theHeightOfANewShelfIsTyped() {
        bench.open("B");
        bench.hand().key("S");
        TypedLength field = bench.part(TypedLength.class, "typed length");
        field.setText("60");
        field.postActionEvent(); // as a height is read in these units: 60 cm
        assertThat(bench.desk().room().racks().get(1).shelves().get(1).heightM())
                .isEqualTo(0.6);
    }
}
