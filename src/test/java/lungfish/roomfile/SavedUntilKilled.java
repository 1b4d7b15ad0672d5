package lungfish.roomfile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Saves the one and the other file over a third in turn, as often as it is told, 0 for ever: what {@link KilledSavingTest} kills. */
final class SavedUntilKilled {
    private SavedUntilKilled() {}

    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        byte[][] contents = {Files.readAllBytes(Path.of(args[1])), Files.readAllBytes(Path.of(args[2]))};
        int times = Integer.parseInt(args[3]);
        System.out.println("begins");
        for (int i = 0; times == 0 || i < times; i++) {
            AtomicSave.onThisDisk().save(file, contents[i % 2]);
        }
    }
}
