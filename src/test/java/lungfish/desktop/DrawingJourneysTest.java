package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import lungfish.NeedsDisplay;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.room.Run;
import org.junit.jupiter.api.Test;

/** Rooms drawn in the real window, with the mouse and the keys of the display. Places are in metres of the room. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class DrawingJourneysTest extends Journey {
    private RoomCanvas canvas() {
        return pane().center().room();
    }

    private Room room() {
        return pane().view().desk().room();
    }

    /** Asked on the event thread, whenever the pointer goes there: the drawing may have been laid out anew. */
    private Supplier<Point> at(double xM, double yM) {
        return () -> {
            Point2D px = canvas().viewport().px(xM, yM);
            return new Point((int) Math.round(px.getX()), (int) Math.round(px.getY()));
        };
    }

    private void drag(double fromXM, double fromYM, double toXM, double toYM) {
        person.drag(canvas(), at(fromXM, fromYM), at(toXM, toYM), () -> {});
    }

    private void click(double xM, double yM) {
        person.click(canvas(), at(xM, yM));
    }

    /** The letter of a tool, once the drawing hears it. */
    private void take(String letter) {
        person.until("the focus on the room", () -> canvas().isFocusOwner());
        person.press(letter);
        person.until("the tool " + letter, () -> String.valueOf(canvas().tool().key())
                .equals(letter));
    }

    private String headline(Subject subject) {
        JButton panel = person.part(JButton.class, subject.name());
        return person.see(panel::getText);
    }

    /** The line under a headline. Asked on the event thread. */
    private String reasonNow(Subject subject) {
        return Parts.find(pane(), JButton.class, subject.name())
                .map(panel -> panel.getAccessibleContext().getAccessibleDescription())
                .orElse("");
    }

    private void untilPlanned() {
        person.until("a plan of it", () -> pane().view().desk().isCurrent());
    }

    private void type(String field, String value) {
        JTextField text = person.part(JTextField.class, field);
        person.click(text);
        person.until("the focus in " + field, text::isFocusOwner);
        person.press("ctrl A");
        person.type(value);
    }

    /** From an empty window to which blower, how much to spare, and a file: no quick questions, all by hand. */
    @Test
    void aRoomIsDrawnFromNothingToAVerdict() {
        Handbook page = new Handbook(
                person,
                "drawn-by-hand",
                "A room drawn by hand",
                "From an empty window to a verdict and a file, with nothing but the drawing tools. A test goes this way with"
                        + " the real mouse and keys, takes the pictures and counts the actions.");
        person.act(NewRoom.class);
        person.until("an empty room", () -> room().racks().isEmpty());
        person.click(person.part(JToggleButton.class, "tool Wall"));
        person.until("the drawing", () -> canvas().isShowing() && canvas().isFocusOwner());
        person.act(ShowChosen.class);
        type("Length", "6 m");
        type("Width", "4 m");
        person.until(
                "its size",
                () -> room().shell().lengthM() == 6 && room().shell().widthM() == 4);

        page.step(
                "Take a drawing tool instead of answering. The room's own fields, **Ctrl+I**, take its size in any unit.");
        person.moveTo(canvas(), at(5, 2.6));
        drag(5, 2.6, 5, 4);
        person.until("an inner wall", () -> room().shell().walls().size() == 1);
        take("R");
        drag(0.3, 0, 2.3, 0.5);
        person.until("the first rack", () -> room().racks().size() == 1);
        page.step(
                "**W** draws walls, **R** racks. A rack is dragged with its back to a wall; its shelves and tanks are those"
                        + " of the row above.");
        take("R");
        drag(3, 0, 5, 0.5);
        person.until("the second rack", () -> room().racks().size() == 2);
        assertThat(person.see(() -> room().seats().size())).isPositive();

        untilPlanned();
        take("P");
        click(0.1, 0.1);
        click(5.9, 0.1);
        click(5.9, 3.9);
        click(0.1, 3.9);
        click(0.1, 0.1);
        person.until("the loop closed", () -> room().runs().stream().anyMatch(Run::closed));

        page.step(
                "**P** draws the main, a click for each corner. It hangs off the walls in its clips, and closes where it"
                        + " meets its start; the nearest taps feed the outlets.");
        take("B");
        click(0.6, 3.4);
        person.until("the blower", () -> room().blowers(Blower.Role.PLANNED).size() == 1);
        untilPlanned();
        assertThat(headline(Subject.DUTY)).contains("at");
        page.step("**B** puts down the blower. The duty, what is left, the noise and the battery are told at once.");

        person.ask(Question.BLOWERS);
        JList<?> list = person.part(JList.class, "candidates");
        person.until("the list", () -> list.isFocusOwner() && !list.isSelectionEmpty());
        person.press("DOWN");
        person.press("ENTER");
        person.until("the choice", () -> room().blowers(Blower.Role.PLANNED).stream()
                .allMatch(blower -> blower.machine().isPresent()));
        person.press("ESCAPE");
        person.until("the panels again", () -> !pane().side().isSheetOpen());
        untilPlanned();
        int more = person.see(
                () -> pane().view().plan().flatMap(Plan::headroom).orElseThrow().outlets());
        assertThat(headline(Subject.HEADROOM)).startsWith(more + " more outlet");
        Path file = folder.resolve("drawn.room.json");
        person.saveAs(file);
        page.step("Choose a class of blower, **Ctrl+B**, and save. That is the plan to buy by.");
        page.end("From nothing to a verdict:");
        assertThat(file).exists();
    }

    /** What a keeper asks before adding tanks: draw the rack, mark it as planned, read what is left. */
    @Test
    void aPlannedRackIsAddedAndTheHeadroomRead() {
        assertThat(person.<String>see(() -> reasonNow(Subject.HEADROOM))).contains("the 18 planned do not all fit");
        int outlets = person.see(() -> room().seats().size());
        int racks = person.see(() -> room().racks().size());
        take("R");
        drag(4.6, 2.6, 5.9, 3.0);
        person.until("the rack", () -> room().racks().size() == racks + 1);
        person.act(ShowChosen.class);
        JComboBox<?> stage = person.part(JComboBox.class, "Stage");
        person.until("the first field", () -> Person.owner() != null);
        person.click(stage);
        person.until("its choices", stage::isPopupVisible);
        person.press("DOWN");
        person.press("ENTER");
        person.until("it is planned", () -> room().racks().get(racks).isPlanned());
        untilPlanned();
        int added = person.see(() -> room().seats().size()) - outlets;
        assertThat(added).isPositive();
        person.until(
                "the headroom of it", () -> reasonNow(Subject.HEADROOM).contains("the " + (18 + added) + " planned"));
        assertThat(headline(Subject.HEADROOM)).endsWith("more outlets");
    }
}
