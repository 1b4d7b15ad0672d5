package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RoomFilesTest {
    private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void anOldFileIsThere() throws IOException {
        file = folder.resolve("my.room.json");
        Files.write(file, OLD);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }

    private void fails(Disk disk) throws IOException {
        assertThatThrownBy(() -> new AtomicSave(disk).save(file, NEW)).hasMessage("broken");
        assertThat(files()).containsExactly(file);
        assertThat(file).hasBinaryContent(OLD);
    }

    private static IOException broken() {
        return new IOException("broken");
    }

    @Test
    void aRoomIsSavedAndOpenedAgain() {
        Room room = Rooms.small();
        assertThat(RoomFiles.save(file, room)).isEmpty();
        assertThat(RoomFiles.open(file, CatalogueFiles.load()).orThrow()).isEqualTo(room);
    }

    @Test
    void savingLeavesNothingBehind() throws IOException {
        RoomFiles.save(file, Rooms.small());
        assertThat(files()).containsExactly(file);
    }

    @Test
    void aNewFileIsMadeWhereNoneWas() {
        Path fresh = folder.resolve("fresh.room.json");
        RoomFiles.save(fresh, Rooms.small());
        assertThat(fresh).hasBinaryContent(RoomWriter.bytes(Rooms.small()));
    }

    @Test
    void aLinkStaysALinkAndItsFileIsReplaced() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.room.json"), file);
        new AtomicSave(Disk.REAL).save(link, NEW);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void theRightsOfTheFileStay() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        new AtomicSave(Disk.REAL).save(file, NEW);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void leftoversOfASaveThatWasCutOffAreNotInTheWay() throws IOException {
        Files.write(folder.resolve(".my.room.json.0.saving"), OLD);
        new AtomicSave(Disk.REAL).save(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void theOldFileStaysWhereNoFreshOneCanBeMade() throws IOException {
        fails(new Disk() {
            @Override
            public Path fresh(Path inFolder, String name) throws IOException {
                throw broken();
            }
        });
    }

    @Test
    void theOldFileStaysWhereTheDiskIsFullHalfWay() throws IOException {
        fails(new Disk() {
            @Override
            public void write(Path fresh, byte[] bytes) throws IOException {
                Files.write(fresh, new byte[] {bytes[0]});
                throw broken();
            }
        });
    }

    @Test
    void theOldFileStaysWhereItCannotBeReplaced() throws IOException {
        fails(new Disk() {
            @Override
            public void replace(Path from, Path to) throws IOException {
                throw broken();
            }
        });
    }

    @Test
    void aFolderThatCannotBeSettledIsNoFailure() throws IOException {
        Disk disk = new Disk() {
            @Override
            public void settle(Path inFolder) throws IOException {
                throw broken();
            }
        };
        new AtomicSave(disk).save(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void whatCannotBeSavedIsAProblem() {
        Path nowhere = folder.resolve("no-such-folder").resolve("my.room.json");
        assertThat(RoomFiles.save(nowhere, Rooms.small()))
                .hasValueSatisfying(problem -> assertThat(problem.found()).startsWith("it could not be saved"));
    }

    @Test
    void aFileThatIsNotThereIsAProblem() {
        assertThat(RoomFiles.open(folder.resolve("none.room.json"), CatalogueFiles.load())
                        .problems())
                .extracting(Problem::path, Problem::expected)
                .containsExactly(tuple("", "a file that can be"));
    }

    @Test
    void aFolderIsNoRoomFile() {
        assertThat(RoomFiles.open(folder, CatalogueFiles.load()).problems()).hasSize(1);
    }
}
