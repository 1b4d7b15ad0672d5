package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JTextArea;
import lungfish.edit.Edit;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Facts about the sheet that sets today's pumps beside the planned blower. */
final class TodaySheetTest {
    @TempDir
    private Path folder;

    private Bench open(String room) {
        Bench bench = new Bench(folder, room);
        bench.ask(Question.TODAY);
        return bench;
    }

    private static String text(Bench bench, String name) {
        return bench.part(JTextArea.class, name).getText();
    }

    private static List<String> lines(Bench bench) {
        return Parts.all(bench.pane())
                .filter(Line.class::isInstance)
                .map(part -> ((Line) part).getText())
                .toList();
    }

    @Test
    void theVerdictIsTheHeadline() {
        assertThat(text(open("starting-out"), "verdict")).isEqualTo("Not yet");
        assertThat(text(open("garage-killifish"), "verdict")).isEqualTo("Yes, though it never pays back");
    }

    /** The room's three pumps and its one blower, as they are drawn. */
    @Test
    void figuresOfBothStandSideBySide() {
        Bench bench = open("starting-out");

        assertThat(text(bench, "Machines, each with its plug, today")).isEqualTo("3");
        assertThat(text(bench, "Machines, each with its plug, planned")).isEqualTo("1");
    }

    @Test
    void aRoomWithoutPumpsAsksWhatRunsAndLeadsToTheTool() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.desk().apply(new Edit("Take the pumps off", TodaySheetTest::withoutPumps));
        bench.ask(Question.TODAY);

        assertThat(text(bench, "because")).startsWith("What runs today?");
        bench.part(JButton.class, "draw-pumps").doClick(0);

        assertThat(bench.pane().center().belt().inHand()).isInstanceOf(MachineTool.class);
        assertThat(Parts.all(bench.pane())
                        .filter(MachineOptions.class::isInstance)
                        .map(part -> ((MachineOptions) part).role()))
                .contains(java.util.Optional.of(Blower.Role.TODAY));
    }

    private static Room withoutPumps(Room room) {
        return room.withBlowers(room.blowers().stream()
                .filter(blower -> blower.role() != Blower.Role.TODAY)
                .toList());
    }

    @Test
    void whereThePumpsStayNoPanelRecommendsABlowerWithoutAWord() {
        Bench bench = new Bench(folder, "starting-out");
        Plan plan = bench.desk().plan().orElseThrow();
        Glances glances =
                new Glances(plan, bench.desk().age(), bench.pane().view().quantities());

        assertThat(lines(bench))
                .anyMatch(line -> line.contains("no blower yet"))
                .noneMatch(line -> line.contains("recommended"));
        assertThat(glances.of(Subject.DUTY).reason()).contains("no blower yet");
        for (Subject subject : List.of(Subject.HEADROOM, Subject.NOISE, Subject.BACKUP)) {
            assertThat(glances.of(subject).reason()).as(subject.name()).startsWith("were a blower bought");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Question.class,
            names = {"BLOWERS", "PIPES", "GROWTH", "SURE"})
    void everySheetOfBlowersSaysThatThePumpsDo(Question question) {
        Bench keeps = new Bench(folder, "starting-out");
        keeps.ask(question);
        Bench buys = new Bench(folder, "garage-killifish");
        buys.ask(question);

        assertThat(text(keeps, "not-yet")).startsWith("No blower yet");
        assertThat(buys.part(JTextArea.class, "not-yet").isVisible()).isFalse();
    }
}
