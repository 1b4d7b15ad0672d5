package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import lungfish.catalogue.CatalogueFiles;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a desk keeps on disk of changes that are not saved, and when it goes. */
final class AutosaveTest {
    private static final Edit WARMER = ClimateEdits.temperatureK(OptionalDouble.of(301));
    private static final Edit COOLER = ClimateEdits.temperatureK(OptionalDouble.of(295));

    @TempDir
    Path folder;

    private Path config;
    private Path rooms;
    private Path file;
    private Desk desk;

    @BeforeEach
    void aDeskWithAFile() throws IOException {
        config = folder.resolve("config");
        rooms = Files.createDirectory(folder.resolve("rooms"));
        file = Files.write(rooms.resolve("my.room.json"), RoomWriter.bytes(Rooms.small()));
        desk = Desks.in(config, Hands.ofTheCaller()).withDemo("starting-out");
        desk.open(file);
    }

    private static List<Path> autosaves(Path in) throws IOException {
        if (!Files.exists(in)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(in)) {
            return all.filter(path -> path.toString().endsWith(".autosave")
                            && !path.toString().endsWith(".safe.autosave"))
                    .toList();
        }
    }

    private List<Path> beside() throws IOException {
        return autosaves(rooms);
    }

    private List<Path> aside() throws IOException {
        return autosaves(config.resolve("autosave"));
    }

    private static Room in(Path autosave) throws IOException {
        return AutosaveFormat.read(Files.readAllBytes(autosave), CatalogueFiles.load())
                .orThrow()
                .what()
                .room();
    }

    @Test
    void whatIsNotSavedStandsBesideTheFile() throws IOException {
        desk.apply(WARMER);
        assertThat(in(beside().get(0))).isEqualTo(WARMER.of(Rooms.small()));
        desk.apply(COOLER);
        assertThat(in(beside().get(0))).isEqualTo(COOLER.of(Rooms.small()));
        assertThat(beside()).hasSize(1);
        assertThat(file).hasBinaryContent(RoomWriter.bytes(Rooms.small()));
    }

    @Test
    void whoeverCutsOffTheHeadHasARoomFile() throws IOException {
        desk.apply(WARMER);
        String all = Files.readString(beside().get(0));
        assertThat(all.substring(all.indexOf("\n}\n") + 3)).isEqualTo(RoomWriter.text(desk.room()));
    }

    @Test
    void aRoomInNoFileIsKeptInTheFolderOfTheProgram() throws IOException {
        desk.openNew("New room", Rooms.empty());
        desk.apply(WARMER);
        assertThat(in(aside().get(0))).isEqualTo(WARMER.of(Rooms.empty()));
        assertThat(desk.keeping().trouble()).isEmpty();
    }

    @Test
    void itGoesWhenTheRoomIsSavedOrAllIsUndone() throws IOException {
        desk.apply(WARMER);
        desk.undo();
        assertThat(beside()).isEmpty();
        desk.redo();
        assertThat(beside()).hasSize(1);
        desk.save(() -> {}, () -> {});
        assertThat(beside()).isEmpty();
        desk.undo(); // now it is the file that has the change
        assertThat(in(beside().get(0))).isEqualTo(Rooms.small());
    }

    @Test
    void itGoesWhenTheWindowIsClosedOrAnotherRoomOpened() throws IOException {
        desk.apply(WARMER);
        desk.close();
        assertThat(beside()).isEmpty();
        desk.apply(COOLER);
        desk.openDemo("starting-out");
        assertThat(beside()).isEmpty();
        assertThat(aside()).isEmpty();
    }

    @Test
    void aRoomSavedElsewhereIsKeptBesideItsNewFile() throws IOException {
        desk.apply(WARMER);
        Path otherFolder = Files.createDirectory(folder.resolve("other"));
        Path other = otherFolder.resolve("other.room.json");
        desk.saveAs(other, () -> {});
        desk.apply(COOLER);
        assertThat(beside()).isEmpty();
        assertThat(in(autosaves(otherFolder).get(0))).isEqualTo(desk.room());
    }

    @Test
    void twoDesksWithOneFileKeepTheirChangesApart() throws IOException {
        Desk second = Desks.in(config, Hands.ofTheCaller()).withDemo("starting-out");
        second.open(file);
        desk.apply(WARMER);
        second.apply(COOLER);
        assertThat(beside()).hasSize(2);
        assertThat(second.recovery().offered()).isEmpty();
        desk.close();
        assertThat(in(beside().get(0))).isEqualTo(second.room());
    }

    @Test
    void whereTheFolderIsGoneItIsKeptInThatOfTheProgramAndSaysSo() throws IOException {
        Files.move(rooms, folder.resolve("moved"));
        desk.apply(WARMER);
        assertThat(in(aside().get(0))).isEqualTo(desk.room());
        assertThat(desk.keeping().trouble().orElseThrow()).contains(rooms.toString(), "not there");
        Files.move(folder.resolve("moved"), rooms);
        desk.apply(COOLER);
        assertThat(beside()).hasSize(1);
        assertThat(aside()).isEmpty();
        assertThat(desk.keeping().trouble()).isEmpty();
    }

    @Test
    void whereNothingCanBeWrittenEditingGoesOnAndItIsTold() throws IOException {
        Files.move(rooms, folder.resolve("moved"));
        Files.writeString(config.resolve("autosave"), "a file where the folder should be");
        desk.apply(WARMER);
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.small()));
        assertThat(desk.keeping().at()).isEmpty();
        assertThat(desk.keeping().trouble()).isPresent();
    }

    /** The disk beside the file takes the work, and never does it. */
    @Test
    void aDiskThatDoesNotAnswerIsLeftAloneAndHoldsNobodyUpTwice() throws IOException {
        Queued silent = new Queued();
        boolean[] isSilent = {true};
        Executor keeping = work -> {
            if (isSilent[0]) {
                isSilent[0] = false;
                silent.execute(work);
            } else {
                work.run();
            }
        };
        Hands hands = new Hands(Runnable::run, Runnable::run, Runnable::run, keeping, Runnable::run);
        Desk slow = Desks.in(config, hands).withDemo("starting-out");
        slow.open(file);
        slow.apply(WARMER);
        slow.apply(COOLER);
        assertThat(in(aside().get(0))).isEqualTo(slow.room());
        slow.apply(WARMER);
        assertThat(in(aside().get(0))).isEqualTo(slow.room());
        silent.runAll();
        assertThat(in(beside().get(0))).isEqualTo(slow.room());
        assertThat(aside()).isEmpty();
    }

    /**
     * All is undone, and something else done at once: a crash may take that, but must not bring back what was undone before
     * it. The disk begins to work when somebody waits for it.
     */
    @Test
    void whatWasUndoneIsGoneBeforeTheNextEditCounts() throws IOException, InterruptedException {
        Queued busy = new Queued();
        AtomicBoolean isBusy = new AtomicBoolean();
        Executor keeping = work -> (isBusy.get() ? busy : (Executor) Runnable::run).execute(work);
        Desk slow = Desks.in(config, new Hands(Runnable::run, Runnable::run, Runnable::run, keeping, Runnable::run))
                .withDemo("starting-out");
        slow.open(file);
        slow.apply(WARMER);
        isBusy.set(true);
        slow.undo();
        assertThat(in(beside().get(0))).isEqualTo(WARMER.of(Rooms.small()));
        Thread disk = whenWaitedFor(Thread.currentThread(), () -> {
            isBusy.set(false);
            busy.runAll();
        });
        slow.apply(COOLER);
        disk.interrupt();
        disk.join();
        assertThat(in(beside().get(0))).isEqualTo(COOLER.of(Rooms.small()));
    }

    private static Thread whenWaitedFor(Thread waiting, Runnable then) {
        Thread thread = new Thread(() -> {
            while (waiting.getState() != Thread.State.TIMED_WAITING) {
                if (Thread.interrupted()) {
                    return; // nobody waits
                }
                Thread.onSpinWait();
            }
            then.run();
        });
        thread.start();
        return thread;
    }
}
