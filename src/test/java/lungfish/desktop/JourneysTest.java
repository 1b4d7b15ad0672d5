package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import lungfish.NeedsDisplay;
import lungfish.drawing.Hit;
import lungfish.drawing.Shown;
import lungfish.plan.Duty;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import org.junit.jupiter.api.Test;

/** Journeys through the real window, with the mouse and the keys of the display. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class JourneysTest extends Journey {
    private String headline(Subject subject) {
        JButton panel = person.part(JButton.class, subject.name());
        return person.see(panel::getText);
    }

    @Test
    void aWhyIsAskedWithTheMouseAndLeftByEscape() {
        JButton duty = person.part(JButton.class, Subject.DUTY.name());
        person.click(duty);
        person.until("the why", () -> pane().side().isSheetOpen());
        assertThat(person.see(() -> Parts.all(pane().side()).anyMatch(part -> part instanceof WhyBlock)))
                .isTrue();
        person.press("ESCAPE");
        person.until(
                "the panels again, and the focus where it was",
                () -> !pane().side().isSheetOpen()
                        && (duty.isFocusOwner() || pane().center().canvas().isFocusOwner()));
    }

    @Test
    void aWhyIsAskedByItsKey() {
        person.act(AskWhy.class);
        person.until("the why", () -> pane().side().isSheetOpen());
        person.press("ESCAPE");
        person.until("the room", () -> pane().center().canvas().isFocusOwner());
    }

    @Test
    void unitsAreSwitchedInPanelsAndTableByOneKey() {
        assertThat(headline(Subject.DUTY)).endsWith("psi");
        person.act(SwitchUnits.class);
        person.until("metric", () -> duty().endsWith("kPa"));
        OutletsTable table = person.part(OutletsTable.class, "outlets");
        int depth = OutletColumn.ALL.indexOf(OutletColumn.DEPTH);
        assertThat(person.see(() -> Parts.cellText(table, 0, depth))).endsWith(" cm");
        person.act(SwitchUnits.class);
        person.until("US units", () -> duty().endsWith("psi"));
    }

    /** Asked on the event thread. */
    private String duty() {
        return Parts.find(pane(), JButton.class, Subject.DUTY.name())
                .map(JButton::getText)
                .orElse("");
    }

    @Test
    void aBlowerIsChosenByKeysAloneAndTheChoiceIsUndone() {
        person.ask(Question.BLOWERS);
        JList<?> list = person.part(JList.class, "candidates");
        person.until("the list", () -> list.isFocusOwner() && !list.isSelectionEmpty());
        person.press("DOWN");
        person.press("ENTER");
        person.until("the plan of the choice", () -> isPlanned(false));
        assertThat(person.see(() -> pane().view().desk().room().blowers(Blower.Role.PLANNED)))
                .allMatch(blower -> blower.machine().isPresent());
        person.act(UndoEdit.class);
        person.until("the plan's own choice", () -> isPlanned(true));
    }

    @Test
    void aBlowerIsChosenWithTheMouse() {
        person.click(person.part(JToggleButton.class, "side-Blowers"));
        JList<?> list = person.part(JList.class, "candidates");
        person.until("the blowers", () -> list.getModel().getSize() > 1);
        person.click(list, () -> middle(list.getCellBounds(1, 1)));
        person.until("the second", () -> list.getSelectedIndex() == 1);
        person.click(person.part(JButton.class, "take"));
        person.until("the plan of the choice", () -> isPlanned(false));
    }

    /** Asked on the event thread. */
    private boolean isPlanned(boolean recommended) {
        return pane().view().desk().isCurrent()
                && pane().view()
                                .plan()
                                .flatMap(lungfish.plan.Plan::duty)
                                .map(Duty::recommended)
                                .orElse(!recommended)
                        == recommended;
    }

    @Test
    void aClickOnAFindingShowsItsPlace() {
        person.click(person.part(javax.swing.JToggleButton.class, "findings-tab"));
        FindingsList findings = person.part(FindingsList.class, "findings");
        person.click(findings, () -> middle(findings.getCellBounds(0, 0)));
        Finding first = person.see(() -> findings.getModel().getElementAt(0));
        person.until("its place", () -> pane().view().chosen().equals(Optional.of(first.where())));
    }

    @Test
    void aPlaceOutOfSightIsBroughtIntoSight() {
        RoomCanvas room = pane().center().room();
        PartId outlet = person.see(
                () -> room.scene().room().seats().get(0).outlet().id().part());
        person.wheel(room, () -> new Point(room.getWidth() - 60, room.getHeight() / 2), -12);
        person.until("the other end of the room", () -> !isSeen(room, outlet));
        OutletsTable table = person.part(OutletsTable.class, "outlets");
        person.click(table, () -> middle(table.getCellRect(0, 1, true)));
        person.until("the outlet of the row", () -> pane().view().chosen().equals(Optional.of(outlet)));
        person.until("its place", () -> isSeen(room, outlet));
    }

    private static boolean isSeen(RoomCanvas room, PartId part) {
        Rectangle place =
                room.viewport().px(room.scene().whereM(part).orElseThrow()).getBounds();
        return new Rectangle(room.getSize()).contains(middle(place));
    }

    private static Point middle(Rectangle cell) {
        return new Point((int) cell.getCenterX(), (int) cell.getCenterY());
    }

    @Test
    void theWheelZoomsAboutThePointerADragPansAndAKeyShowsAllAgain() {
        RoomCanvas room = pane().center().room();
        Point at = person.see(() -> new Point(room.getWidth() / 3, room.getHeight() / 3));
        var all = person.see(room::viewport);
        var there = person.see(() -> room.viewport().m(at));
        person.wheel(room, () -> at, -3);
        person.until("larger", () -> room.viewport().lengthPx(1) > all.lengthPx(1) * 1.5);
        assertThat(person.see(() -> room.viewport().m(at).distance(there))).isLessThan(1e-6);
        person.dragWithTheMiddle(room, at, new Point(at.x + 40, at.y + 25));
        person.until(
                "panned",
                () -> room.viewport().m(new Point(at.x + 40, at.y + 25)).distance(there) < 1e-6);
        person.act(ZoomToFit.class);
        person.until("all of it", () -> room.viewport().equals(all));
    }

    @Test
    void aDoubleClickOnARackOpensItsFrontAndEscapeLeadsBack() {
        RoomCanvas room = pane().center().room();
        person.doubleClick(room, () -> spotOnARack(room));
        person.until("the front", () -> pane().center().canvas() instanceof RackCanvas rack && rack.isFocusOwner());
        person.press("ESCAPE");
        person.until("the room", room::isFocusOwner);
    }

    @Test
    void theRoomIsWalkedByArrowsAndARackOpensByEnter() {
        person.press("RIGHT");
        PartId first = person.see(
                () -> pane().center().room().scene().room().racks().get(0).id().part());
        person.until("the first rack", () -> pane().view().chosen().equals(Optional.of(first)));
        person.press("ENTER");
        person.until("its front", () -> pane().center().isRackOpen());
    }

    /** A point of the canvas where nothing lies over a rack but its tanks. */
    private static Point spotOnARack(RoomCanvas room) {
        for (int x = 0; x < room.getWidth(); x += 6) {
            for (int y = 0; y < room.getHeight(); y += 6) {
                if (isRack(room, x, y) && isRack(room, x + 8, y + 8)) {
                    return new Point(x + 4, y + 4);
                }
            }
        }
        throw new AssertionError("no rack can be clicked");
    }

    private static boolean isRack(RoomCanvas room, int x, int y) {
        return room.hit(new Point(x, y))
                .map(Hit::kind)
                .filter(kind -> kind == Hit.Kind.RACK || kind == Hit.Kind.TANK)
                .isPresent();
    }

    @Test
    void whatIsUnderThePointerIsTold() {
        RoomCanvas room = pane().center().room();
        person.moveTo(room, () -> spotOnARack(room));
        person.until("what is there", () -> pane().view().marked().hovered().isPresent());
        Line telling = person.part(Line.class, "telling");
        assertThat(person.<String>see(telling::getText)).isNotBlank().doesNotContain("wheel zooms");
    }

    @Test
    void theTableIsFilteredByTypingAndSaysWhichStateItShows() {
        person.act(FindOutlet.class);
        JTextField filter = person.part(JTextField.class, "filter");
        person.until("the filter", filter::isFocusOwner);
        person.type("spawning");
        OutletsTable table = person.part(OutletsTable.class, "outlets");
        person.until("fewer rows", () -> table.getRowCount() > 0 && table.getRowCount() < 40);
        JCheckBox asSet = person.part(JCheckBox.class, "as-set");
        person.click(asSet);
        person.until("as it is set", () -> pane().view().shown() == Shown.AS_IT_IS_SET);
    }

    @Test
    void theSixthFunctionKeyWalksFromRegionToRegionAndBack() {
        person.press("F6");
        person.until("the panels", () -> isIn(pane().side()));
        person.press("F6");
        person.until("the table", () -> isIn(pane().below()));
        person.press("F6");
        person.until("the head", () -> !isIn(pane().below()) && !isIn(pane().center()));
        person.press("F6");
        person.until("the room", () -> isIn(pane().center()));
        person.press("shift F6");
        person.until("the head again", () -> !isIn(pane().center()) && !isIn(pane().side()));
    }

    private static boolean isIn(Component region) {
        Component owner =
                java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && javax.swing.SwingUtilities.isDescendingFrom(owner, region);
    }

    /** From nothing to "which blower": a key for the new room, a number, a key; the plan is there. */
    @Test
    void anEmptyRoomIsSetUpByThreeActions() {
        person.act(NewRoom.class);
        JTextField length = person.part(JTextField.class, "Length of the room");
        person.until("the first question", length::isFocusOwner);
        person.press("ctrl A");
        person.type("18 ft");
        person.until("a plan", () -> !pane().view().desk().room().racks().isEmpty() && isPlanned(true));
        assertThat(person.actions()).isEqualTo(3);
        person.until("the room", () -> pane().center().room().isFocusOwner());
    }
}
