package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.roomfile.RoomWriter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

final class HistoryTest {
    private static final History START = History.of("Open", Rooms.small());

    private static Room warm(double temperatureK) {
        return ClimateEdits.temperatureK(OptionalDouble.of(temperatureK)).of(Rooms.small());
    }

    @Test
    void theFirstRoomCannotBeUndone() {
        assertThat(START.toUndo()).isEmpty();
        assertThat(START.toRedo()).isEmpty();
        assertThat(START.undone()).isSameAs(START);
        assertThat(START.redone()).isSameAs(START);
    }

    @Test
    void eachStepIsNamedForUndoAndRedo() {
        History history = START.after("Heat", warm(300)).after("Cool", warm(290));
        assertThat(history.toUndo()).hasValue("Cool");
        assertThat(history.undone().toUndo()).hasValue("Heat");
        assertThat(history.undone().toRedo()).hasValue("Cool");
        assertThat(history.undone().undone().toRedo()).hasValue("Heat");
    }

    @Test
    void aNewStepCutsOffWhatWasUndone() {
        History other = START.after("Heat", warm(300)).undone().after("Cool", warm(290));
        assertThat(other.toRedo()).isEmpty();
        assertThat(other.room()).isEqualTo(warm(290));
        assertThat(other.undone().room()).isEqualTo(Rooms.small());
    }

    @Test
    void aRoomThatIsEqualIsNoStep() {
        assertThat(START.after("Nothing", Rooms.small())).isSameAs(START);
    }

    /** A plain list of saved bytes beside the history: up to 200 edits, then back through all of them, then forth. */
    @Property(tries = 30)
    void eachUndoAndEachRedoGivesTheBytesOfBefore(
            @ForAll @Size(max = 200) List<@IntRange(min = 250, max = 320) Integer> temperatures) {
        List<String> saved = new ArrayList<>(List.of(RoomWriter.text(START.room())));
        History history = START;
        for (int kelvin : temperatures) {
            Edit edit = ClimateEdits.temperatureK(OptionalDouble.of(kelvin));
            History next = history.after(edit.done(), edit.of(history.room()));
            if (next.at() > history.at()) {
                saved.add(RoomWriter.text(next.room()));
            }
            history = next;
        }
        for (int i = saved.size() - 1; i >= 0; i--) {
            assertThat(RoomWriter.text(history.room())).isEqualTo(saved.get(i));
            history = history.undone();
        }
        for (String text : saved) {
            assertThat(RoomWriter.text(history.room())).isEqualTo(text);
            history = history.redone();
        }
    }
}
