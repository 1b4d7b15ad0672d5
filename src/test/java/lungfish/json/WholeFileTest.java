package lungfish.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whatever lies where a file should, it is read whole or refused with a reason, and nothing waits or fills the memory. */
final class WholeFileTest {
    private static final int MOST = 1000;

    @TempDir
    private Path folder;

    private Path file(int bytes) throws IOException {
        return Files.write(folder.resolve("file"), new byte[bytes]);
    }

    @Test
    void aFileIsReadUpToItsLimit() throws IOException {
        assertThat(WholeFile.read(file(0), MOST)).isEmpty();
        assertThat(WholeFile.read(file(MOST), MOST)).hasSize(MOST);
        assertThatThrownBy(() -> WholeFile.read(file(MOST + 1), MOST))
                .isInstanceOfSatisfying(
                        WholeFile.TooLarge.class, e -> assertThat(e.bytes()).isEqualTo(MOST + 1));
    }

    /** Two hundred megabytes of nothing take no room on the disk, and none in the memory. */
    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        Path huge = folder.resolve("huge");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(200L << 20);
        }
        assertThatThrownBy(() -> WholeFile.read(huge, JsonReader.MOST_BYTES))
                .isInstanceOf(WholeFile.TooLarge.class)
                .hasMessageContaining("209715200");
    }

    @Test
    void aFolderIsNoFile() {
        assertThatThrownBy(() -> WholeFile.read(folder, MOST)).hasMessage("it is a folder");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linksAreFollowedWhereTheyLeadSomewhere() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), file(3));
        assertThat(WholeFile.read(link, MOST)).hasSize(3);

        Path loop = folder.resolve("loop");
        Files.createSymbolicLink(loop, loop);
        assertThatThrownBy(() -> WholeFile.read(loop, MOST)).isInstanceOf(IOException.class);

        Path dangling = Files.createSymbolicLink(folder.resolve("dangling"), folder.resolve("gone"));
        assertThatThrownBy(() -> WholeFile.read(dangling, MOST))
                .isInstanceOfSatisfying(
                        IOException.class, e -> assertThat(WholeFile.reason(e)).isEqualTo("it is not there"));
    }

    /** Read to its end, the one would fill the memory and the other wait for ever. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void devicesAndPipesAreNoFiles() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/zero")), "needs /dev/zero");
        assertThatThrownBy(() -> WholeFile.read(Path.of("/dev/zero"), MOST)).hasMessageContaining("a device or a pipe");

        Path pipe = folder.resolve("pipe");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "needs mkfifo");
        assertThatThrownBy(() -> WholeFile.read(pipe, MOST)).hasMessageContaining("a device or a pipe");
    }
}
