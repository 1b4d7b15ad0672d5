package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.Room;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet on which a keeper says what keeps the air on, as one types and clicks. */
final class BackupSheetTest {
    private static final DocsWindows.Deaf DEAF = new DocsWindows.Deaf();

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");

    @BeforeAll
    static void isOnNoScreen() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(DEAF);
    }

    @AfterAll
    static void hearsAgain() throws Exception {
        DEAF.leave();
    }

    private Room open(String room) {
        bench = new Bench(folder, room);
        bench.pane().addNotify(); // a sheet in a window hears of changes
        bench.act(SayBackup.class);
        return room();
    }

    private Room room() {
        return bench.desk().room();
    }

    private Backup backup() {
        return room().backup();
    }

    private void click(String button) {
        bench.part(JButton.class, button).doClick(0);
    }

    private void choose(String box, int index) {
        bench.part(JComboBox.class, box).setSelectedIndex(index);
    }

    private void type(String field, String text) {
        JTextField there = bench.part(JTextField.class, field);
        there.setText(text);
        there.postActionEvent();
    }

    private String silence(String field) {
        return String.valueOf(bench.part(JTextField.class, field).getClientProperty("JTextField.placeholderText"));
    }

    private boolean isThere(String name) {
        return Parts.all(bench.pane()).anyMatch(part -> name.equals(part.getName()));
    }

    private Optional<String> trouble() {
        return Parts.all(bench.part(BackupSheet.class, "sheet"))
                .filter(PropertyGrid.class::isInstance)
                .flatMap(grid -> ((PropertyGrid) grid).trouble().stream())
                .findFirst();
    }

    private String says(String paragraph) {
        JTextArea there = bench.part(JTextArea.class, paragraph);
        return there.isVisible() ? there.getText() : "";
    }

    /** 80 Ah are 288 000 C. Three steps are undone: added, count, capacity. */
    @Test
    void aBatteryIsAddedSaidAndUndone() {
        Room before = open("garage-killifish");
        choose("Add a battery, of which kind", 2); // lithium iron phosphate, the last of batteries.csv
        click("Add a battery");
        type("Battery: How many", "2");
        type("Battery: Capacity of one", "80 Ah");
        assertThat(backup().batteries()).singleElement().satisfies(battery -> {
            assertThat(battery.kind()).isEqualTo("lifepo4");
            assertThat(battery.count()).isEqualTo(2);
            assertThat(battery.capacityC()).isEqualTo(288_000);
            assertThat(battery.voltageV()).isEqualTo(12.8);
        });
        Stream.of(1, 2, 3).forEach(step -> bench.act(UndoEdit.class));
        assertThat(room()).isEqualTo(before);
        assertThat(isThere("Battery: How many")).isFalse();
    }

    @Test
    void whatCannotBeIsToldBesideItsFieldAndStaysToBeMended() {
        Room before = open("basement-rainbows");
        type("Battery: How many", "0");
        assertThat(trouble()).hasValueSatisfying(said -> assertThat(said).contains("from 1 to 1000"));
        assertThat(bench.part(JTextField.class, "Battery: How many").getText()).isEqualTo("0");
        type("Battery: How many", "2");
        type("Battery: Voltage of one", "");
        assertThat(trouble()).hasValueSatisfying(said -> assertThat(said).contains("cannot be left out"));
        assertThat(room()).isEqualTo(before);
    }

    @Test
    void twoBatteriesHaveNamesOfTheirOwn() {
        open("basement-rainbows");
        click("Add a battery");
        type("Battery 2: Temperature", "10 °C");
        assertThat(backup().batteries())
                .extracting(Backup.Battery::temperatureK)
                .containsExactly(OptionalDouble.of(291), OptionalDouble.of(283.15));
        click("Remove: Battery 1");
        assertThat(backup().batteries()).singleElement().satisfies(left -> assertThat(left.kind())
                .isEqualTo("lead-flooded")); // the first kind that is offered
    }

    /** Each is there after it was added, and not after it was removed. */
    @ParameterizedTest
    @CsvSource({
        "Add an inverter, Inverter",
        "Add a generator, Generator",
        "Add battery pumps, Battery pumps",
        "Add an alarm, Low-pressure alarm",
        "Say how, Shedding"
    })
    void whatThereIsOnceIsAddedAndRemoved(String add, String name) {
        Room before = open("starting-out");
        click(add);
        assertThat(room()).isNotEqualTo(before);
        assertThat(isThere(add)).isFalse();
        click("Remove: " + name);
        assertThat(room()).isEqualTo(before);
        assertThat(isThere(add)).isTrue();
    }

    @Test
    void whatAGeneratorGivesAndForHowLongIsSaidInAnyUnit() {
        open("starting-out");
        click("Add a generator");
        type("Generator: Rated power", "1.2 kW");
        type("Generator: Fuel lasts", "5 h");
        type("Generator: Ready after", "10 min");
        assertThat(backup().generator())
                .hasValue(new Backup.Generator(
                        OptionalDouble.of(1200), OptionalDouble.of(18_000), OptionalDouble.of(600)));
        assertThat(says("mind: Generator")).startsWith("Caution: A generator's exhaust kills unseen.");
    }

    /** 8 h and 15 min: assumed.csv. */
    @Test
    void anAlarmIsHeardSooner() {
        open("garage-killifish");
        assertThat(silence("How long it takes: Noticed after")).isEqualTo("8 h, assumed");
        click("Add an alarm");
        assertThat(silence("How long it takes: Noticed after")).isEqualTo("15 min, assumed");
        type("How long it takes: Noticed after", "20 min");
        type("How long it takes: Mended after", "2 days");
        assertThat(backup().noticeS()).hasValue(1200);
        assertThat(backup().mendS()).hasValue(172_800);
    }

    @Test
    void theLevelsOfOxygenAreSaidAndTheAlarmStaysAboveTheDanger() {
        open("garage-killifish");
        type("What is wished for: Alarm at oxygen of", "5 mg/L");
        assertThat(room().wishes().alarmKgPerM3()).hasValue(0.005);
        type("What is wished for: Danger below oxygen of", "6 mg/L");
        assertThat(room().wishes().dangerKgPerM3()).isEmpty();
        assertThat(trouble()).hasValueSatisfying(said -> assertThat(said).contains("5.0 mg/L", "6.0 mg/L"));
    }

    /** The hall has a standby (club-hall.room.json); the garage has none. */
    @Test
    void whatStartsTheStandbyIsSaidWhereOneStands() {
        open("garage-killifish");
        assertThat(isThere("Standby blower: Starts")).isFalse();
        click("Draw a standby");
        assertThat(bench.pane().center().belt().inHand()).isInstanceOf(MachineTool.class);
        assertThat(Parts.all(bench.pane())
                        .filter(MachineOptions.class::isInstance)
                        .map(part -> ((MachineOptions) part).role()))
                .contains(Optional.of(Blower.Role.STANDBY));

        open("club-hall");
        choose("Standby blower: Starts", 1); // after "not said": by itself
        assertThat(backup().standby().orElseThrow().start()).isEqualTo(Backup.Standby.Start.AUTOMATIC);
        assertThat(backup().standby().orElseThrow().readyS()).hasValue(600);
    }

    @Test
    void aCircuitIsAddedNamedAndTakenAwayFromWhatHungOnIt() {
        open("basement-rainbows");
        click("Add a circuit");
        type("Circuit 1: Name", "Workbench");
        choose("Workbench: Has an RCD or GFCI", 1);
        assertThat(room().circuits())
                .filteredOn(circuit -> circuit.name().equals("Workbench"))
                .extracting(Circuit::residualCurrentProtected)
                .containsExactly(Optional.of(true));
        click("Remove: North wall, lights and air");
        assertThat(backup().batteries().get(0).chargedFrom()).isEmpty();
    }

    @Test
    void theChargerIsSaidWhereThereAreBatteries() {
        open("garage-killifish");
        assertThat(isThere("Batteries: Power of the charger")).isFalse();
        click("Add a battery");
        type("Batteries: Power of the charger", "200 W");
        assertThat(backup().chargerW()).hasValue(200);
    }

    @Test
    void whatNothingHelpsAgainstIsSaidUntilSomethingDoes() {
        open("garage-killifish");
        assertThat(says("backup-headline")).isEqualTo("No battery");
        assertThat(says("backup-nothing")).startsWith("Nothing gives air");
        click("Add battery pumps");
        assertThat(says("backup-nothing")).isEmpty();
        click("Add a battery");
        assertThat(says("backup-headline")).endsWith("on battery");
        assertThat(says("wrong: Inverter")).startsWith("Worth mending: There is a battery but no inverter");
        click("Add an inverter");
        assertThat(says("wrong: Inverter")).doesNotContain("no inverter");
    }

    @Test
    void thePanelOfTheBackupOpensItToo() {
        bench = new Bench(folder, "garage-killifish");
        click("offer-BACKUP");
        assertThat(bench.part(BackupSheet.class, "sheet")).isNotNull();
    }

    /** Batteries, inverter, alarm and circuits are not drawn in the room: what leads to them leads here. */
    @Test
    void whatIsFoundOfThePartsLeadsHere() {
        for (PartId.Kind kind : List.of(PartId.Kind.BATTERY, PartId.Kind.INVERTER, PartId.Kind.CIRCUIT)) {
            bench = new Bench(folder, "basement-rainbows");
            bench.pane().side().lead(new PartId(kind, "north"));
            assertThat(bench.pane().side().isSheetOpen()).as("%s", kind).isTrue();
        }
    }

    @Test
    void aFieldInUseStaysWhileTheRoomChanges() {
        open("basement-rainbows");
        JTextField typed = bench.part(JTextField.class, "Inverter: Idle draw");
        type("Inverter: Efficiency", "91 %");
        Function<Room, OptionalDouble> efficiency =
                room -> room.backup().inverter().orElseThrow().efficiency();
        assertThat(efficiency.apply(room())).hasValue(0.91);
        assertThat(bench.part(JTextField.class, "Inverter: Idle draw")).isSameAs(typed);
    }
}
