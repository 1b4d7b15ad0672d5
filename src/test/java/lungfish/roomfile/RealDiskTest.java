package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Saving where it cannot be done, on a real disk: a program of its own, run as an ordinary user, for whom the folder is read-only or
 * the disk, a small one in memory, is full. Root may write anywhere, so that as root it would prove nothing.
 */
@EnabledOnOs(OS.LINUX)
final class RealDiskTest {
    private static final String NOBODY = "setpriv --reuid 65534 --regid 65534 --clear-groups ";
    private static final String OLD = "the old file";

    @TempDir
    private Path folder;

    private Path program;

    @BeforeEach
    void anOrdinaryUserMayRunTheProgram() throws Exception {
        assumeTrue(
                shell("test $(id -u) = 0 && unshare -m true && " + NOBODY + "true"), "needs root, unshare and setpriv");
        open(folder);
        program = open(Files.createDirectory(folder.resolve("program")));
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        for (String entry : path.split(File.pathSeparator, -1)) {
            if (entry.matches(".*(jackson|commons-)[^/]*") || entry.matches(".*classes/?")) {
                copy(Path.of(entry), program.resolve(Path.of(entry).getFileName()));
            }
        }
    }

    private static Path open(Path place) throws IOException {
        assertThat(place.toFile().setReadable(true, false)).isTrue();
        assertThat(place.toFile().setExecutable(true, false)).isTrue();
        return place;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : (Iterable<Path>) all::iterator) {
                Path there = to.resolve(from.relativize(each).toString());
                Files.copy(each, there, StandardCopyOption.REPLACE_EXISTING);
                open(there);
            }
        }
    }

    private static boolean shell(String command) throws Exception {
        return new ProcessBuilder("sh", "-c", command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }

    /** What a shell script says; it runs as root, and the program in it as nobody. */
    private String says(String before, Path file, String after) throws Exception {
        List<String> path = new ArrayList<>();
        try (Stream<Path> all = Files.list(program)) {
            all.forEach(each -> path.add(each.toString()));
        }
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String run = NOBODY + java + " -Xmx128m -XX:+UseSerialGC -cp " + String.join(":", path) + " "
                + SavedOnce.class.getName() + " " + file;
        Process process = new ProcessBuilder("unshare", "-m", "sh", "-ec", before + "\n" + run + "\n" + after)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    @Test
    void inAReadOnlyFolderTheOldFileStaysAndTheReasonIsTold() throws Exception {
        Path there = open(Files.createDirectory(folder.resolve("readonly")));
        Path file = Files.writeString(there.resolve("my.room.json"), OLD);

        String said = says("", file, "ls -A " + there);

        assertThat(said).contains("could not be saved and was left as it was");
        assertThat(said.lines()).contains("my.room.json").hasSize(2);
        assertThat(file).hasContent(OLD);
    }

    /** A disk of 96 kilobytes with 64 of them taken; the demo room has more than is left. */
    @Test
    void onAFullDiskTheOldFileStaysAndNothingIsLeftBehind() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path file = disk.resolve("my.room.json");
        String before = "mount -t tmpfs -o size=96k,mode=777 tmpfs " + disk + "\n"
                + "printf '" + OLD + "' > " + file + "; chmod 666 " + file + "\n"
                + "head -c 65536 /dev/zero > " + disk + "/other";

        String said = says(before, file, "ls -A " + disk + "; cat " + file);

        assertThat(said).contains("could not be saved and was left as it was", "No space left on device", OLD);
        assertThat(said.lines()).contains("my.room.json", "other").noneMatch(line -> line.contains(".saving"));
    }

    /** The same where there is room: else the tests above would prove nothing. */
    @Test
    void whereThereIsRoomItIsSaved() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("roomy"));
        Path file = disk.resolve("my.room.json");
        String before = "mount -t tmpfs -o size=4m,mode=777 tmpfs " + disk;

        assertThat(says(before, file, "head -c 400 " + file)).contains("saved", "\"format\"");
    }
}
