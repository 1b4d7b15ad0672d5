package lungfish.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import lungfish.json.Problem;
import lungfish.json.WholeFile;
import lungfish.roomfile.AtomicSave;

/** Reads lists of a spreadsheet and writes files away from the asker, and tells the front what came of it. */
public final class TextFiles {
    /** A list of tanks is a few kilobytes; a file of another kind may be anything. */
    private static final int MOST_BYTES = 4_000_000;

    private final Hands hands;

    /** With the hands of a desk. */
    public TextFiles(Desk desk) {
        this.hands = desk.shared().hands();
    }

    /**
     * Reads a file.
     *
     * @param then takes its text; or nothing, and why it could not be read
     */
    public void read(Path file, BiConsumer<Optional<ListText>, String> then) {
        hands.disk().execute(() -> {
            Optional<ListText> text = Optional.empty();
            String trouble = "";
            try {
                text = Optional.of(ListText.of(WholeFile.read(file, MOST_BYTES)));
            } catch (WholeFile.TooLarge e) {
                trouble = file.getFileName() + " is too large for a list of tanks. Export that list alone, as CSV.";
            } catch (IOException e) {
                trouble = file.getFileName() + " cannot be read: " + reason(e) + ". Choose another file.";
            }
            Optional<ListText> read = text;
            String said = trouble;
            hands.front().execute(() -> then.accept(read, said));
        });
    }

    /**
     * Replaces a file, whole or not at all.
     *
     * @param then takes why it could not be written; empty when it was
     */
    public void write(Path file, String text, Consumer<String> then) {
        write(
                file,
                () -> text.getBytes(StandardCharsets.UTF_8),
                trouble -> then.accept(trouble.map(problem -> problem.found() + ". Choose another place.")
                        .orElse("")));
    }

    /**
     * The same with what is made away from the asker.
     *
     * @param then as above
     */
    public void write(Path file, Supplier<byte[]> making, Consumer<Optional<Problem>> then) {
        hands.disk().execute(() -> {
            Optional<Problem> trouble = Optional.empty();
            try {
                AtomicSave.onThisDisk().save(file, making.get());
            } catch (IOException e) {
                String found = file.getFileName() + " cannot be written: " + reason(e);
                trouble = Optional.of(new Problem("", found, "a place that may be written to"));
            }
            Optional<Problem> said = trouble;
            hands.front().execute(() -> then.accept(said));
        });
    }

    private static String reason(IOException e) {
        return WholeFile.reason(e);
    }
}
