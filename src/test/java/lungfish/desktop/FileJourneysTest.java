package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import lungfish.NeedsDisplay;
import lungfish.edit.BlowerEdits;
import lungfish.quantity.DisplayUnits;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;

/** Journeys of files through the real window, its dialogs and the keys of the display. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class FileJourneysTest extends Journey {
    private String roomName() {
        return pane().view().desk().room().name();
    }

    private Path demo(String name) throws IOException {
        return Files.write(folder.resolve("mine.room.json"), DemoRooms.bytes(name));
    }

    /** Into the dialog of files, which waits for a name. */
    private void typeFile(Path file) {
        person.focusedInDialog(JTextField.class);
        person.press("ctrl A");
        person.type(file.toString());
    }

    private void open(Path file) {
        person.act(OpenRoom.class);
        typeFile(file);
    }

    private void edit() {
        person.see(() -> {
            pane().view().desk().apply(BlowerEdits.shutTheBleed());
            return true;
        });
        person.until("an edit", () -> pane().view().desk().isChanged());
    }

    private void untilTitle(String title) {
        person.until("the title " + title, () -> person.window().getTitle().equals(title));
    }

    @Test
    void fromTheStartToWhichBlowerAndWhyAreThreeActions() throws IOException {
        Path mine = demo("garage-killifish");
        person.act(OpenRoom.class);
        typeOnly(mine);
        person.until(
                "its plan",
                () -> roomName().equals("Garage killifish")
                        && pane().view().desk().isCurrent());
        person.ask(Question.BLOWERS);
        JList<?> list = person.part(JList.class, "candidates");
        person.until(
                "the blowers, the best first, each with its verdict",
                () -> list.getModel().getSize() > 5);
        assertThat(person.actions()).isEqualTo(3);
    }

    private void typeOnly(Path file) {
        person.focusedInDialog(JTextField.class);
        person.type(file.toString());
    }

    @Test
    void aBrokenFileIsToldAsAListThatCanBeCopiedAndNothingElseBreaks() throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.room.json"), "{\"name\": 7}");
        edit();
        person.see(() -> {
            pane().view().desk().showIn(DisplayUnits.METRIC);
            return true;
        });
        open(broken);
        answerUnsaved("Do not save");
        Paragraph problems = person.part(Paragraph.class, "problems");
        assertThat(person.<String>see(problems::getText)).contains("/name: ").contains("/shell");
        JButton copy = person.part(JButton.class, "copy");
        person.until("the copy button", copy::isFocusOwner);
        person.press("SPACE");
        person.until("a copy of the whole list", () -> {
            String copied = clipboard();
            return copied.startsWith("broken.room.json could not be opened\n")
                    && copied.contains("/name: ")
                    && copied.contains("/shell");
        });
        assertThat(person.see(this::roomName)).isEqualTo("Basement rainbows");
        person.press("ESCAPE");
        person.act(UndoEdit.class);
        person.until("the edit undone", () -> !pane().view().desk().isChanged());
    }

    private static String clipboard() {
        try {
            return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
        } catch (java.awt.datatransfer.UnsupportedFlavorException | IOException | IllegalStateException e) {
            return "";
        }
    }

    /** Walks to the choice in the dialog that asks, and takes it. */
    private void answerUnsaved(String choice) {
        Window dialog = SwingUtilities.getWindowAncestor(person.focusedInDialog(JButton.class));
        JButton wanted = person.see(() -> Parts.all(dialog)
                .filter(JButton.class::isInstance)
                .map(JButton.class::cast)
                .filter(button -> choice.equals(button.getText()))
                .findFirst()
                .orElseThrow());
        while (!person.<Boolean>see(wanted::isFocusOwner)) {
            Component before = person.see(Person::owner);
            person.press("TAB");
            person.until("the next choice", () -> Person.owner() != before && Person.owner() instanceof JButton);
        }
        person.press("SPACE");
        person.until("the answer taken", () -> !dialog.isShowing());
    }

    @Test
    void aDemoRoomIsSavedAsAFileWithTheSameBytesAndTheTitleSaysSo() throws IOException {
        untilTitle("Basement rainbows · Lungfish");
        edit();
        untilTitle("Basement rainbows (not saved) · Lungfish");
        person.act(UndoEdit.class);
        untilTitle("Basement rainbows · Lungfish");
        person.act(SaveRoomAs.class);
        Path kept = folder.resolve("kept.room.json");
        typeFile(kept);
        person.until("the file", () -> pane().view().desk().file().equals(Optional.of(kept)));
        assertThat(kept).hasBinaryContent(DemoRooms.bytes("basement-rainbows"));
        untilTitle("Basement rainbows · kept.room.json · Lungfish");
    }

    @Test
    void saveWritesToTheFileThatIsOpenWithoutAsking() throws IOException {
        Path mine = demo("starting-out");
        open(mine);
        person.until("the room", () -> pane().view().desk().file().equals(Optional.of(mine)));
        edit();
        person.act(SaveRoom.class);
        person.until("saved", () -> !pane().view().desk().isChanged());
        assertThat(Files.readString(mine)).contains("unbled");
    }

    @Test
    void closingAsksWhereSomethingIsNotSavedAndStaysIfOneThinksBetterOfIt() {
        edit();
        person.act(CloseWindow.class);
        answerUnsaved("Cancel");
        person.until("the room again", () -> person.window().isFocused());
        assertThat(person.windows()).hasSize(1);
        person.act(CloseWindow.class);
        answerUnsaved("Do not save");
        person.until("no window", () -> person.isEmpty());
    }

    @Test
    void closingSavesFirstWhereOneSaysSo() throws IOException {
        Path mine = demo("starting-out");
        open(mine);
        person.until("the room", () -> pane().view().desk().file().equals(Optional.of(mine)));
        edit();
        person.act(CloseWindow.class);
        answerUnsaved("Save");
        person.until("no window", () -> person.isEmpty());
        assertThat(mine).content().contains("unbled");
    }

    @Test
    void quittingAsksForEveryWindowAndClosesNoneIfOneStays() {
        edit();
        person.act(OpenWindow.class);
        person.until(
                "a second window", () -> person.count() == 2 && person.window().isFocused());
        edit();
        person.act(QuitProgram.class);
        answerUnsaved("Do not save");
        answerUnsaved("Cancel");
        person.until("the second window", () -> person.window().isFocused());
        assertThat(person.windows())
                .hasSize(2)
                .allMatch(window -> window.pane().view().desk().isChanged());
        person.act(QuitProgram.class);
        answerUnsaved("Do not save");
        answerUnsaved("Do not save");
        person.until("no window", () -> person.isEmpty());
    }

    private static boolean isInMenu(String name) {
        return java.util.Arrays.stream(
                        javax.swing.MenuSelectionManager.defaultManager().getSelectedPath())
                .anyMatch(part -> part.getComponent() instanceof javax.swing.JMenuItem item
                        && item.getText().equals(name));
    }

    @Test
    void aRoomLatelySavedStandsInTheMenuOfTheNextWindow() {
        person.act(SaveRoomAs.class);
        Path kept = folder.resolve("kept.room.json");
        typeFile(kept);
        person.until("the file", () -> pane().view().desk().file().equals(Optional.of(kept)));
        person.act(OpenWindow.class);
        person.until(
                "a second window", () -> person.count() == 2 && person.window().isFocused());
        person.press("alt F");
        person.until("the menu of files", () -> isInMenu("File"));
        person.press("R");
        person.until("the recent rooms", () -> isInMenu("Recent rooms"));
        person.press("DOWN");
        person.until("the latest of them", () -> isInMenu("kept.room.json"));
        person.press("ENTER");
        person.until("the room", () -> pane().view().desk().file().equals(Optional.of(kept)));
    }
}
