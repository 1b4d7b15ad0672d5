package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a crash left is offered, and nothing of it is lost before the keeper says so. */
final class RecoveryTest {
    private static final Edit WARMER = ClimateEdits.temperatureK(OptionalDouble.of(301));
    private static final Edit COOLER = ClimateEdits.temperatureK(OptionalDouble.of(295));
    private static final Instant NOON = Instant.parse("2024-05-01T12:00:00Z");

    /** No process has this number: it is beyond what any system gives. */
    private static final long NOBODY = 1L << 40;

    @TempDir
    Path folder;

    private Path file;
    private Desk desk;

    @BeforeEach
    void aFileAndADesk() throws IOException {
        file = Files.write(folder.resolve("my.room.json"), RoomWriter.bytes(Rooms.small()));
        desk = Desks.in(folder.resolve("config"), Hands.ofTheCaller()).withDemo("starting-out");
    }

    private static Owner dead() {
        return new Owner(Owner.me().machine(), NOBODY, Optional.empty());
    }

    /** As a program leaves it that is cut off. */
    private Path left(Path at, Optional<Path> of, Room room, Owner owner, Instant time) throws IOException {
        Files.createDirectories(at.getParent());
        Unsaved what = new Unsaved(of, Optional.empty(), "Move rack B", room);
        return Files.write(at, AutosaveFormat.bytes(what, time, owner));
    }

    private Path leftBeside(Room room, Owner owner) throws IOException {
        return left(folder.resolve(".my.room.json.0a0a0a0a.autosave"), Optional.of(file), room, owner, NOON);
    }

    private Path leftWithoutFile(Room room) throws IOException {
        Path at = folder.resolve("config").resolve("autosave").resolve("0b0b0b0b.autosave");
        return left(at, Optional.empty(), room, dead(), NOON);
    }

    @Test
    void openingTheFileOffersWhatWasLeftWithItsTimeAndLastStep() throws IOException {
        leftBeside(WARMER.of(Rooms.small()), dead());
        desk.open(file);
        Leftover offered = desk.recovery().offered().orElseThrow();
        assertThat(offered.time()).hasValue(NOON);
        assertThat(offered.done()).hasValue("Move rack B");
        assertThat(offered.file()).hasValue(file);
        assertThat(desk.room()).isEqualTo(Rooms.small());
        assertThat(desk.isChanged()).isFalse();
    }

    @Test
    void whatIsTakenIsAChangeThatIsNotSavedAndCanBeUndone() throws IOException {
        Path left = leftBeside(WARMER.of(Rooms.small()), dead());
        desk.open(file);
        desk.recovery().take();
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.small()));
        assertThat(desk.isChanged()).isTrue();
        assertThat(desk.recovery().offered()).isEmpty();
        assertThat(left).exists();
        desk.undo();
        assertThat(desk.room()).isEqualTo(Rooms.small());
        assertThat(left).exists();
        desk.redo();
        desk.save(() -> {}, () -> {});
        assertThat(file).hasBinaryContent(RoomWriter.bytes(WARMER.of(Rooms.small())));
        assertThat(left).doesNotExist();
    }

    @Test
    void whatIsLeftIsOfferedAgainNextTimeEvenAfterOtherChangesWereSaved() throws IOException {
        Path left = leftBeside(WARMER.of(Rooms.small()), dead());
        desk.open(file);
        desk.recovery().leave();
        assertThat(desk.recovery().offered()).isEmpty();
        desk.apply(COOLER);
        desk.save(() -> {}, () -> {});
        assertThat(left).exists();
        desk.open(file);
        assertThat(desk.recovery().offered()).isPresent();
    }

    @Test
    void onlyWhatIsThrownAwayIsGone() throws IOException {
        Path left = leftBeside(WARMER.of(Rooms.small()), dead());
        desk.open(file);
        desk.recovery().discard();
        assertThat(left).doesNotExist();
        assertThat(desk.recovery().offered()).isEmpty();
    }

    @Test
    void changesMadeBeforeItIsTakenStayAmongTheSteps() throws IOException {
        leftBeside(WARMER.of(Rooms.small()), dead());
        desk.open(file);
        desk.apply(COOLER);
        desk.recovery().take();
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.small()));
        desk.undo();
        assertThat(desk.room()).isEqualTo(COOLER.of(Rooms.small()));
    }

    @Test
    void theStartOffersRoomsWithoutAFileAndThoseOfFilesLatelyOpen() throws IOException {
        desk.open(file);
        leftBeside(WARMER.of(Rooms.small()), dead());
        leftWithoutFile(COOLER.of(Rooms.empty()));
        Desk next = Desks.in(folder.resolve("config"), Hands.ofTheCaller()).withDemo("starting-out");
        next.recovery().look();
        assertThat(next.recovery().count()).isEqualTo(2);
        next.recovery().take();
        assertThat(next.recovery().count()).isEqualTo(1);
        next.recovery().take();
        assertThat(next.recovery().count()).isZero();
    }

    @Test
    void aRoomWithoutAFileComesBackAsOneThatIsNotSaved() throws IOException {
        Path left = leftWithoutFile(WARMER.of(Rooms.empty()));
        desk.recovery().look();
        desk.recovery().take();
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.empty()));
        assertThat(desk.file()).isEmpty();
        assertThat(desk.isChanged()).isTrue();
        desk.openDemo("starting-out"); // the keeper was asked, and gave it up
        assertThat(left).doesNotExist();
    }

    @Test
    void aRoomWhoseFileIsGoneComesBackWithIt() throws IOException {
        leftBeside(WARMER.of(Rooms.small()), dead());
        Path other = folder.resolve("config").resolve("autosave").resolve("0c0c0c0c.autosave");
        Path gone = folder.resolve("gone.room.json");
        left(other, Optional.of(gone), COOLER.of(Rooms.small()), dead(), NOON.plusSeconds(1));
        desk.recovery().look();
        desk.recovery().take();
        assertThat(desk.room()).isEqualTo(COOLER.of(Rooms.small()));
        assertThat(desk.file()).hasValue(gone);
        desk.save(() -> {}, () -> {});
        assertThat(gone).hasBinaryContent(RoomWriter.bytes(COOLER.of(Rooms.small())));
    }

    @Test
    void whatALivingProgramKeepsIsNotOffered() throws IOException {
        leftBeside(WARMER.of(Rooms.small()), Owner.me());
        desk.open(file);
        assertThat(desk.recovery().offered()).isEmpty();
    }

    @Test
    void aProcessWithTheNumberOfTheDeadOneIsNotTheOwner() throws IOException {
        Owner me = Owner.me();
        leftBeside(WARMER.of(Rooms.small()), new Owner(me.machine(), me.pid(), Optional.of(NOON)));
        desk.open(file);
        assertThat(desk.recovery().offered()).isPresent();
    }

    @Test
    void whatAnotherMachineKeepsIsToldAndStaysWhenTaken() throws IOException {
        Path left = leftBeside(WARMER.of(Rooms.small()), new Owner("some other machine", 1, Optional.empty()));
        desk.open(file);
        assertThat(desk.recovery().offered().orElseThrow().elsewhere()).hasValue("some other machine");
        desk.recovery().take();
        desk.save(() -> {}, () -> {});
        assertThat(left).exists();
    }

    @Test
    void whatWasSavedBeforeTheCrashGoesWithoutAWord() throws IOException {
        Path left = leftBeside(Rooms.small(), dead());
        desk.open(file);
        assertThat(desk.recovery().offered()).isEmpty();
        assertThat(left).doesNotExist();
    }

    /** Half of it, and an empty one. */
    @Test
    void anAutosaveThatIsNotWholeIsToldAndKept() throws IOException {
        Path left = leftBeside(WARMER.of(Rooms.small()), dead());
        byte[] whole = Files.readAllBytes(left);
        for (int length : List.of(0, 40, whole.length / 2, whole.length - 1)) {
            Files.write(left, Arrays.copyOf(whole, length));
            Desk next = Desks.in(folder.resolve("config"), Hands.ofTheCaller()).withDemo("starting-out");
            next.open(file);
            assertThat(next.recovery().offered().orElseThrow().holds().problems())
                    .as("%d bytes", length)
                    .isNotEmpty();
            next.recovery().leave();
            assertThat(left).exists();
        }
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotWrittenOverUnasked() throws IOException {
        desk.open(file);
        desk.apply(WARMER);
        Files.write(file, RoomWriter.bytes(COOLER.of(Rooms.small())));
        boolean[] told = {false, false};
        desk.save(() -> told[0] = true, () -> told[1] = true);
        assertThat(told).containsExactly(false, true);
        assertThat(file).hasBinaryContent(RoomWriter.bytes(COOLER.of(Rooms.small())));
        assertThat(desk.isChanged()).isTrue();
        desk.saveAs(file, () -> told[0] = true);
        assertThat(told[0]).isTrue();
        assertThat(file).hasBinaryContent(RoomWriter.bytes(WARMER.of(Rooms.small())));
        desk.undo();
        desk.save(() -> {}, () -> told[0] = false);
        assertThat(told[0]).isTrue();
    }

    @Test
    void aFileThatIsGoneIsSavedAnew() throws IOException {
        desk.open(file);
        desk.apply(WARMER);
        Files.delete(file);
        desk.save(() -> {}, () -> {});
        assertThat(file).hasBinaryContent(RoomWriter.bytes(desk.room()));
    }
}
