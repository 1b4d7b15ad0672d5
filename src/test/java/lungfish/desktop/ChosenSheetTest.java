package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import lungfish.edit.CircuitEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.Tank;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fields of what is chosen, as one types into them. */
final class ChosenSheetTest {
    private static final double INCH_M = 0.0254;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
    }

    private Room room() {
        return bench.desk().room();
    }

    private Rack rack() {
        return room().racks().get(0);
    }

    private List<Tank> tanks() {
        return rack().tanks().toList();
    }

    private void choose(Part... parts) {
        bench.pane().view().select(Selection.of(parts));
    }

    private void type(String field, String text) {
        JTextField there = bench.part(JTextField.class, field);
        there.setText(text);
        there.postActionEvent();
    }

    @Test
    void withNothingChosenTheRoomHasItsSays() {
        choose();
        type("Length", "20 ft");
        assertThat(room().shell().lengthM()).isCloseTo(240 * INCH_M, within(1e-9));
        assertThat(bench.desk().history().toUndo()).isPresent();
    }

    @Test
    void aPlaceIsTypedInAnyUnit() {
        choose(Part.rack(rack().id()));
        type("From the left wall", "12 in");
        assertThat(rack().xM()).isCloseTo(12 * INCH_M, within(1e-9));
    }

    @Test
    void whatIsNotUnderstoodStaysToBeMended() {
        Rack before = rack();
        choose(Part.rack(before.id()));
        type("From the left wall", "12 inchs");
        assertThat(rack()).isEqualTo(before);
        assertThat(bench.part(JTextField.class, "From the left wall").getText()).isEqualTo("12 inchs");
        assertThat(bench.part(ChosenSheet.class, "chosen").trouble())
                .hasValueSatisfying(said -> assertThat(said).contains("12 inchs"));
    }

    @Test
    void whatCannotBeDoneIsTold() {
        Rack before = rack();
        choose(Part.rack(before.id()));
        type("From the left wall", "90 m");
        assertThat(rack()).isEqualTo(before);
        assertThat(bench.part(ChosenSheet.class, "chosen").trouble()).isPresent();
        assertThat(bench.part(JTextField.class, "From the left wall").getText()).isEqualTo("90 m");
    }

    @Test
    void severalTanksAreFilledAtOnceAndCalledMixedWhereTheyDiffer() {
        List<Tank> tanks = tanks();
        choose(Part.tank(tanks.get(0).id()), Part.tank(tanks.get(1).id()));
        type("Depth of water", "11 cm");
        assertThat(tanks().subList(0, 2))
                .allSatisfy(tank -> assertThat(tank.waterDepthM()).isCloseTo(0.11, within(1e-9)));

        choose(Part.tank(tanks.get(0).id()));
        type("Depth of water", "10 cm");
        choose(Part.tank(tanks.get(0).id()), Part.tank(tanks.get(1).id()));
        JTextField depth = bench.part(JTextField.class, "Depth of water");
        assertThat(depth.getText()).isEmpty();
        assertThat(depth.getClientProperty("JTextField.placeholderText")).isEqualTo("mixed");
    }

    @Test
    void anEmptyFieldSaysNothingAndTellsWhatIsAssumed() {
        Outlet outlet = tanks().get(0).outlets().get(0);
        choose(Part.outlet(outlet.id()));
        type("Target", "3 L/min");
        assertThat(tanks().get(0).outlets().get(0).flow().targetM3PerS()).hasValue(3e-3 / 60);
        type("Target", "");
        assertThat(tanks().get(0).outlets().get(0).flow().targetM3PerS()).isEmpty();
        assertThat(bench.part(JTextField.class, "Target").getClientProperty("JTextField.placeholderText"))
                .isEqualTo("1.50 L/min, usual for the device"); // box-filter in devices.csv
    }

    /** 0.4 g a day; the room of the garage is shown in metric units. */
    @Test
    void whoLivesInATankAndWhatTheyAreFedIsTyped() {
        choose(Part.tank(tanks().get(0).id()));
        type("Fish, and what one weighs", "20 rainbows, 8 g; 4 loaches, 12 g");
        type("Dry food a day", "0.4 g");
        type("Protein in the food", "45 %");
        bench.part(JComboBox.class, "Just fed").setSelectedIndex(1);
        Tank tank = tanks().get(0);
        assertThat(tank.fish())
                .containsExactly(new Tank.Fish("rainbows", 20, 0.008), new Tank.Fish("loaches", 4, 0.012));
        assertThat(tank.feeding()).hasValue(new Tank.Feeding(0.0004, OptionalDouble.of(0.45)));
        assertThat(tank.justFed()).hasValue(true);
        type("Fish, and what one weighs", "many");
        assertThat(tanks().get(0)).isEqualTo(tank);
        assertThat(bench.part(ChosenSheet.class, "chosen").trouble()).isPresent();
    }

    @Test
    void whatStirsATankWithoutTheAirIsChosen() {
        choose(Part.tank(tanks().get(0).id()));
        bench.part(JComboBox.class, "Stirred without air by").setSelectedIndex(1);
        type("Power of that", "6 W");
        bench.part(JComboBox.class, "Circuit of that").setSelectedIndex(1);
        assertThat(room().stirrers()).singleElement().satisfies(stirrer -> {
            assertThat(stirrer.tank()).isEqualTo(tanks().get(0).id());
            assertThat(stirrer.kind()).isEqualTo(Stirrer.Kind.HANG_ON_FILTER);
            assertThat(stirrer.powerW()).hasValue(6);
            assertThat(stirrer.circuit()).hasValue(room().circuits().get(0).id());
        });
    }

    @Test
    void aCircuitThatIsNewCanBeChosenAtOnce() {
        choose(Part.tank(tanks().get(0).id()));
        int before = bench.part(JComboBox.class, "Circuit of that").getItemCount();
        bench.desk().apply(CircuitEdits.add(room()).edit().orElseThrow());
        assertThat(bench.part(JComboBox.class, "Circuit of that").getItemCount())
                .isEqualTo(before + 1);
    }

    @Test
    void aStageIsPicked() {
        choose(Part.rack(rack().id()));
        JComboBox<?> stage = bench.part(JComboBox.class, "Stage");
        stage.setSelectedIndex(stage.getItemCount() - 1);
        assertThat(rack().isPlanned()).isTrue();
        bench.act(UndoEdit.class);
        assertThat(rack().isPlanned()).isFalse();
    }

    @Test
    void aStepIsPickedAndNamed() {
        choose(Part.rack(rack().id()));
        bench.part(JComboBox.class, "Step, while planned").setSelectedIndex(3); // after "the next": 1, 2, 3
        type("Name of that step", "next year");
        assertThat(rack().step().number()).isEqualTo(3);
        assertThat(rack().step().name()).contains("next year");
        type("Name of that step", "");
        assertThat(rack().step().name()).isEmpty();
    }
}
