package lungfish.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.edit.Edit;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomFiles;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program is killed in the middle of random edits, and what it left is looked at. A change is done when it is on the desk
 * and whoever changed it goes on; the killed program has then announced it. At most the last one announced may be lost.
 */
final class KilledTest {
    private static final int KILLS = Integer.getInteger("lungfish.kills", 200);
    private static final int AT_ONCE = 4;
    private static final int MOST_CHANGES = 20;

    /** Longer than one write takes, so that kills fall before, into and behind them. */
    private static final int MOST_DELAY_MS = 25;

    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final List<String> ROOMS = List.of("starting-out", "garage-killifish", "basement-rainbows");

    @TempDir
    private Path folder;

    @Test
    void atMostTheLastEditIsLostHoweverOftenTheProgramIsKilled() throws Exception {
        ExecutorService several = Executors.newFixedThreadPool(AT_ONCE);
        List<Callable<Boolean>> kills = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            long seed = i;
            kills.add(() -> killed(seed));
        }
        for (Future<Boolean> kill : several.invokeAll(kills)) {
            assertThat(kill.get()).isTrue();
        }
        several.shutdown();
    }

    private static Process child(Path file, long seed) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command =
                new ArrayList<>(List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m"));
        command.addAll(List.of("-cp", classPath(), EditedUntilKilled.class.getName()));
        command.addAll(List.of(config(file).toString(), file.toString(), Long.toString(seed)));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private static Path config(Path file) {
        return file.resolveSibling("config");
    }

    private boolean killed(long seed) throws IOException, InterruptedException {
        Random random = new Random(seed);
        byte[] bytes = DemoRooms.bytes(ROOMS.get(random.nextInt(ROOMS.size())));
        Path file = Files.write(
                Files.createDirectories(folder.resolve("kill-" + seed)).resolve("my.room.json"), bytes);
        Process child = child(file, seed);
        int announced = killAt(1 + random.nextInt(MOST_CHANGES), random.nextInt(MOST_DELAY_MS * 1000), child);
        List<String> rooms = roomsUpTo(announced + 1, bytes, seed);
        assertThat(rooms.lastIndexOf(RoomWriter.text(found(file))))
                .as("the change found, of seed %d", seed)
                .isBetween(announced - 1, announced + 1);
        return true;
    }

    /** Waits for a change to be announced and a while more, kills, and gives the number last announced. */
    private static int killAt(int change, int delayUs, Process child) throws IOException, InterruptedException {
        int last = 0;
        try (BufferedReader said = new BufferedReader(new InputStreamReader(child.getInputStream(), UTF_8))) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                last = Integer.parseInt(line);
                if (last == change) {
                    spin(delayUs);
                    child.toHandle().destroyForcibly(); // the process itself would close what it said, too
                }
            }
        }
        child.waitFor();
        return last;
    }

    /** Far finer than a sleep, which a test must not do anyway. */
    private static void spin(int us) {
        long until = System.nanoTime() + us * 1000L;
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
    }

    /** What the next program finds: the autosave, or else the file. Whatever is there can be read. */
    private static Room found(Path file) {
        List<Leftover> left = new Rescue(CATALOGUE, config(file).resolve("autosave")).about(file);
        assertThat(left).hasSizeLessThan(2).allMatch(each -> each.what().isPresent());
        Optional<Room> kept = left.stream().findFirst().flatMap(Leftover::what).map(Unsaved::room);
        return kept.orElseGet(() -> RoomFiles.open(file, CATALOGUE).orThrow());
    }

    /** The rooms from the first on. One change more than was announced may have been made: the kill fell between the two. */
    private static List<String> roomsUpTo(int last, byte[] start, long seed) {
        Replay replay = new Replay(new RoomReader(CATALOGUE).read(start).orThrow());
        RandomHand hand = new RandomHand(seed);
        List<String> rooms = new ArrayList<>(List.of(RoomWriter.text(replay.room())));
        for (int change = 1; change <= last; change++) {
            hand.change(replay);
            rooms.add(RoomWriter.text(replay.room()));
        }
        return rooms;
    }

    /** The same steps without a desk. */
    private static final class Replay implements RandomHand.Steps {
        private History history;

        Replay(Room start) {
            history = History.of("Open", start);
        }

        @Override
        public Room room() {
            return history.room();
        }

        @Override
        public void apply(Edit edit) {
            history = history.after(edit.done(), edit.of(history.room()));
        }

        @Override
        public void undo() {
            history = history.undone();
        }

        @Override
        public void redo() {
            history = history.redone();
        }
    }
}
