package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextField;
import lungfish.NeedsDisplay;
import lungfish.headroom.Headroom;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import org.junit.jupiter.api.Test;

/** The journeys of the handbook, gone as they are told. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class HandbookJourneysTest extends Journey {
    private void untilPlanned() {
        person.until("the plan of the room", () -> pane().view().desk().isCurrent());
    }

    private void answer(String field, String text) {
        JTextField there = person.part(JTextField.class, field);
        if (!person.see(there::isFocusOwner)) {
            person.click(there);
        }
        person.until("the field to type over", () -> there.isFocusOwner() && there.getSelectedText() != null);
        person.write(text);
    }

    /** A place of the room, m, on the canvas. */
    private Point at(double xM, double yM) {
        Point2D px = pane().center().room().viewport().px(xM, yM);
        return new Point((int) Math.round(px.getX()), (int) Math.round(px.getY()));
    }

    private Rack rack(String name) {
        return person.see(() -> pane().view().desk().room().racks().stream()
                .filter(rack -> rack.name().equals(name))
                .findFirst()
                .orElseThrow());
    }

    /** Of the rack before, which was dragged, something is chosen still. */
    private static boolean isOf(Rack rack, PartId part) {
        boolean isInside = rack.tanks()
                .anyMatch(tank -> tank.id().part().equals(part)
                        || tank.outlets().stream()
                                .anyMatch(outlet -> outlet.id().part().equals(part)));
        return isInside || rack.id().part().equals(part);
    }

    private static double midXM(Rack rack) {
        return rack.xM() + rack.spanXM() / 2;
    }

    private static double midYM(Rack rack) {
        return rack.yM() + rack.spanYM() / 2;
    }

    private static Point middle(Canvas canvas, PartId part) {
        Rectangle2D place = canvas.viewport().px(canvas.whereM(part).orElseThrow());
        return new Point((int) (place.getX() + place.getWidth() / 4), (int) place.getCenterY());
    }

    /** From an empty window to a saved room of 20 tanks with a loop and a blower. */
    @Test
    void aRoomOfTwentyTanksIsSetUpByThreeQuestionsChangedAndSaved() throws IOException {
        Handbook page = new Handbook(
                person,
                "three-questions",
                "A room of 20 tanks by three questions",
                "From an empty window to a saved plan. Every step is done by a test with the real mouse and keys, which also"
                        + " takes the pictures and counts the actions: a click, a drag, a key, or a value typed.");
        person.act(NewRoom.class);
        JTextField length = person.part(JTextField.class, "Length of the room");
        person.until("the first question", length::isFocusOwner);
        page.step(
                "An empty room asks three questions. **Ctrl+N** begins one; the tools above are there for those who rather"
                        + " draw.");
        answer("Length of the room", "19 ft 8 in");
        answer("Width of the room", "4 m");
        answer("Number of tanks", "20");
        answer("Number of today's pumps", "5");
        page.step("Say what you know, in any unit. Feet, metres, 20 tanks, the five pumps of today.");
        person.click(person.part(JButton.class, "set-up"));
        person.until("the racks", () -> !pane().view().desk().room().racks().isEmpty());
        untilPlanned();
        page.step(
                "The room is there, with a loop and a blower. Racks stand along the walls, the loop hangs under the ceiling,"
                        + " and the panels say what the room needs, how much more fits, how loud it will be, and what a night"
                        + " without mains takes.");
        RoomCanvas room = pane().center().room();
        Rack last = rack("Rack D");
        person.drag(room, () -> at(midXM(last), midYM(last)), () -> at(midXM(last), midYM(last) + 1.2), () -> {
            untilPlanned();
            page.step("Drag what stands in the wrong place. It snaps to walls, racks and grid, shows what is left"
                    + " between, and every panel follows while it moves.");
        });
        untilPlanned();
        page.step("Nothing is final. **Ctrl+Z** takes back as many steps as you like, each by its name.");
        Rack first = rack("Rack A");
        person.click(room, () -> at(first.xM() + first.spanXM() / 10, midYM(first)));
        person.until(
                "something of it chosen",
                () -> pane().view().chosen().filter(part -> isOf(first, part)).isPresent());
        person.press("ENTER");
        person.until("its front", () -> pane().center().canvas() instanceof RackCanvas front && front.isFocusOwner());
        person.press("D");
        Canvas front = pane().center().canvas();
        PartId tank = first.tanks().findFirst().orElseThrow().id().part();
        person.click(front, () -> middle(front, tank));
        untilPlanned();
        page.step(
                "A double click, or Enter, opens a rack from its front. Tanks, shelves and devices are put down, dragged and copied"
                        + " there; **D** and a click hang a second device into the first tank.");
        person.press("ESCAPE");
        person.press("ESCAPE");
        person.until("the room", room::isFocusOwner);
        person.press("R");
        person.drag(room, () -> at(1.2, 3.99), () -> at(3.6, 3.4), () -> {
            untilPlanned();
            page.step(
                    "A rack for later is drawn with the rack tool, **R**. Beside the hand stands what it costs: so many"
                            + " outlets more, so many left.");
        });
        person.press("V");
        person.act(ShowChosen.class);
        JComboBox<?> stage = person.part(JComboBox.class, "Stage");
        person.click(stage);
        person.until("its choices", stage::isPopupVisible);
        person.press("DOWN");
        person.press("ENTER");
        person.until("the rack is planned", () -> pane().view().desk().room().racks().stream()
                .anyMatch(Rack::isPlanned));
        untilPlanned();
        page.step("Call it planned, and the room stays as it is. Its outlets are open rings, on the drawing and in the"
                + " headroom: do they still fit?");
        person.act(ShowAssumed.class);
        JTextField temperature = person.part(JTextField.class, "Room temperature, assumed");
        person.until("its field", temperature::isFocusOwner);
        person.type("25 C");
        person.until(
                "the temperature",
                () -> pane().view().desk().room().climate().temperatureK().isPresent());
        untilPlanned();
        page.step("What you do not say is assumed, and listed. Say it where it stands, or keep the value as your own.");
        person.ask(Question.BLOWERS);
        JList<?> candidates = person.part(JList.class, "candidates");
        person.until("the list", () -> candidates.isFocusOwner() && !candidates.isSelectionEmpty());
        page.step(
                "Every class of blower has its verdict. **Ctrl+B** lists them in the order of your wishes, each with its"
                        + " figures and the reason why it stands there.");
        person.press("ENTER");
        untilPlanned();
        person.until("the list still", candidates::isFocusOwner);
        person.press("ESCAPE");
        person.until("the panels again", () -> !pane().side().isSheetOpen() && Person.owner() != null);
        Path file = folder.resolve("my-fish-room.room.json");
        person.saveAs(file);
        page.step("Saved. The file is plain text, and any other program can read it.");
        page.end("From nothing to a plan to build by:");
        Plan plan = person.see(() -> pane().view().plan().orElseThrow());
        assertThat(plan.outlets().size()).isEqualTo(21); // the size alone: a list of them fills pages
        assertThat(plan.duty())
                .hasValueSatisfying(duty -> assertThat(duty.recommended()).isFalse());
        assertThat(plan.headroom().map(Headroom::outlets))
                .hasValueSatisfying(left -> assertThat(left).isPositive());
        assertThat(file).exists();
    }
}
