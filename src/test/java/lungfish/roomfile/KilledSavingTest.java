package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program is killed while it saves, over and over: the file is the one or the other as a whole, every time. Two programs that
 * save one file at once leave one of the two as a whole. {@code -Dlungfish.saving.kills=1000} kills a thousand times.
 */
final class KilledSavingTest {
    private static final int KILLS = Integer.getInteger("lungfish.saving.kills", 25);

    /** Some tens of saves pass meanwhile, so that kills fall before, into and behind them. */
    private static final int MOST_DELAY_US = 40_000;

    @TempDir
    private Path folder;

    private Path file;
    private Path one;
    private Path other;

    /** Of unlike lengths, so that a mixture could not look like either. */
    @BeforeEach
    void twoRooms() throws IOException {
        one = Files.write(folder.resolve("one"), DemoRooms.bytes("starting-out"));
        other = Files.write(folder.resolve("other"), DemoRooms.bytes("basement-rainbows"));
        file = Files.copy(one, Files.createDirectory(folder.resolve("there")).resolve("my.room.json"));
    }

    private Process saving(int times) throws IOException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx64m",
                "-cp",
                path));
        command.addAll(List.of(
                SavedUntilKilled.class.getName(),
                file.toString(),
                one.toString(),
                other.toString(),
                String.valueOf(times)));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private void isWhole(String when) throws IOException {
        assertThat(Files.readAllBytes(file)).as(when).isIn(Files.readAllBytes(one), Files.readAllBytes(other));
    }

    @Test
    void aKillLeavesTheOldOrTheNewFileWhole() throws Exception {
        for (int i = 0; i < KILLS; i++) {
            Process child = saving(0);
            try (BufferedReader said = child.inputReader()) {
                assertThat(said.readLine()).isEqualTo("begins");
                spin(new Random(i).nextInt(MOST_DELAY_US));
                child.toHandle().destroyForcibly();
                child.waitFor();
            }
            isWhole("kill " + i);
        }
    }

    private static void spin(int us) {
        long until = System.nanoTime() + us * 1000L;
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
    }

    @Test
    void twoProgramsAtOnceLeaveOneOfTheTwoWholeAndNothingElse() throws Exception {
        Process first = saving(151);
        Process second = saving(150);
        while (first.isAlive() || second.isAlive()) {
            isWhole("while both save");
        }
        assertThat(first.waitFor()).isZero();
        assertThat(second.waitFor()).isZero();
        isWhole("in the end");
        try (Stream<Path> left = Files.list(file.getParent())) {
            assertThat(left).containsExactly(file);
        }
    }
}
