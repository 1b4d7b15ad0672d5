package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.roomfile.RoomFiles;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A desk and its files. */
final class DeskFilesTest {
    private static final Edit WARMER = ClimateEdits.temperatureK(OptionalDouble.of(301));

    @TempDir
    Path folder;

    private final Queued disk = new Queued();
    private Desk desk;
    private Ear ear;
    private Path file;

    @BeforeEach
    void aDeskWithARoomWithoutAFile() {
        desk = desks().with("Open", Rooms.small());
        ear = Ear.on(desk);
        file = folder.resolve("my.room.json");
    }

    private Desks desks() {
        return Desks.in(
                folder.resolve("config"), new Hands(Runnable::run, Runnable::run, disk, Runnable::run, Runnable::run));
    }

    private Room onDisk(Path that) {
        return RoomFiles.open(that, CatalogueFiles.load()).orThrow();
    }

    private static void nothing() {}

    private void isUntouched() {
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.small()));
        assertThat(desk.history().toUndo()).hasValue(WARMER.done());
        assertThat(desk.file()).isEmpty();
        assertThat(desk.isChanged()).isTrue();
        assertThat(desk.plan().orElseThrow().room()).isEqualTo(desk.room());
        assertThat(Recent.files(desk.shared().preferences())).isEmpty();
    }

    @Test
    void aFileIsOpenedInPlaceOfTheRoom() throws IOException {
        Room other = WARMER.of(Rooms.small());
        Files.write(file, RoomWriter.bytes(other));
        desk.open(file);
        disk.runAll();
        assertThat(desk.room()).isEqualTo(other);
        assertThat(desk.file()).hasValue(file);
        assertThat(desk.isChanged()).isFalse();
        assertThat(desk.history().toUndo()).isEmpty();
        assertThat(desk.plan().orElseThrow().room()).isEqualTo(other);
        assertThat(ear.troubles()).isEmpty();
    }

    @Test
    void aWrongFileShowsEveryProblemAndChangesNothing() throws IOException {
        desk.apply(WARMER);
        int changes = ear.changes();
        Files.writeString(
                file,
                RoomWriter.text(Rooms.small())
                        .replace("\"length_m\": 6", "\"length_m\": -6")
                        .replace("\"height_m\": 2.4", "\"height_m\": \"high\""));
        desk.open(file);
        disk.runAll();
        isUntouched();
        assertThat(ear.changes()).isEqualTo(changes);
        assertThat(ear.troubles()).hasSize(1);
        assertThat(ear.troubles().get(0).text())
                .startsWith("my.room.json could not be opened\n")
                .contains("/shell/length_m: ", "/shell/height_m: ");
    }

    @Test
    void aFileThatIsNotThereChangesNothing() {
        desk.apply(WARMER);
        desk.open(folder.resolve("nowhere.room.json"));
        desk.open(folder);
        disk.runAll();
        isUntouched();
        assertThat(ear.troubles()).hasSize(1).first().satisfies(each -> assertThat(each.problems())
                .isNotEmpty());
    }

    @Test
    void anEditMadeWhileTheFileIsReadIsNotLost() throws IOException {
        Files.write(file, RoomWriter.bytes(Rooms.empty()));
        desk.open(file);
        desk.apply(WARMER);
        disk.runAll();
        isUntouched();
        assertThat(ear.troubles()).hasSize(1);
    }

    @Test
    void aRoomSavedIsNoLongerChanged() {
        boolean[] told = {false};
        desk.apply(WARMER);
        desk.saveAs(file, () -> told[0] = true);
        assertThat(desk.isChanged()).isTrue();
        disk.runAll();
        assertThat(told[0]).isTrue();
        assertThat(desk.isChanged()).isFalse();
        assertThat(desk.file()).hasValue(file);
        assertThat(onDisk(file)).isEqualTo(desk.room());
        desk.undo();
        assertThat(desk.isChanged()).isTrue();
        desk.redo();
        assertThat(desk.isChanged()).isFalse();
    }

    @Test
    void whatIsDoneDuringASaveIsNotYetSaved() {
        desk.saveAs(file, DeskFilesTest::nothing);
        desk.apply(WARMER);
        disk.runAll();
        assertThat(desk.isChanged()).isTrue();
        assertThat(onDisk(file)).isEqualTo(Rooms.small());
    }

    @Test
    void aSaveThatFailsIsToldAndTheRoomStaysUnsaved() {
        desk.apply(WARMER);
        boolean[] told = {false};
        desk.saveAs(folder.resolve("no such folder").resolve("my.room.json"), () -> told[0] = true);
        disk.runAll();
        assertThat(told[0]).isFalse();
        isUntouched();
        assertThat(ear.troubles()).hasSize(1);
        assertThat(ear.troubles().get(0).text()).contains("my.room.json could not be saved");
    }

    @Test
    void aRoomWithoutAFileCannotBeSavedWithoutAName() {
        assertThatThrownBy(() -> desk.save(DeskFilesTest::nothing, DeskFilesTest::nothing))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aDemoRoomHasNoFileAndNothingToSave() {
        desk.saveAs(file, DeskFilesTest::nothing);
        disk.runAll();
        desk.apply(WARMER);
        desk.openDemo("starting-out");
        assertThat(desk.file()).isEmpty();
        assertThat(desk.isChanged()).isFalse();
        assertThat(desk.room().name()).isEqualTo("Starting out");
    }

    @Test
    void otherUnitsAreNoChangeOfTheRoomButTheFileRemembersThem() {
        desk.showIn(DisplayUnits.US);
        assertThat(desk.units()).isEqualTo(DisplayUnits.US);
        assertThat(desk.isChanged()).isFalse();
        assertThat(desk.history().toUndo()).isEmpty();
        desk.saveAs(file, DeskFilesTest::nothing);
        disk.runAll();
        assertThat(onDisk(file).displayUnits()).isEqualTo(DisplayUnits.US);
        assertThat(desk.isChanged()).isFalse();
    }

    @Test
    void unitsOnceChosenAreThoseOfWhateverIsOpenedNext() {
        assertThat(desk.units()).isEqualTo(DisplayUnits.METRIC);
        desk.showIn(DisplayUnits.US);
        desk.openDemo("garage-killifish"); // its file says metric
        assertThat(desk.units()).isEqualTo(DisplayUnits.US);
        disk.runAll();
        assertThat(desks().with("Open", Rooms.small()).units()).isEqualTo(DisplayUnits.US);
    }

    @Test
    void filesOpenedAndSavedAreRecentInEveryWindow() {
        Path other = folder.resolve("other.room.json");
        Desk second = desk.shared().with("Open", Rooms.empty());
        desk.saveAs(file, DeskFilesTest::nothing);
        second.saveAs(other, DeskFilesTest::nothing);
        disk.runAll();
        desk.open(file);
        disk.runAll();
        assertThat(Recent.files(second.shared().preferences())).isEqualTo(List.of(file, other));
    }
}
