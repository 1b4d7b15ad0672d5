package lungfish.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads a JSON text of UTF-8 bytes into a value, or tells every problem with it. */
public final class JsonReader {
    /** The most bytes that are read: some hundred times a large hall. */
    public static final int MOST_BYTES = 64 << 20;

    private JsonReader() {}

    /**
     * Reads bytes.
     *
     * @param reader makes the value from the outermost JSON value; problems that it tells refuse the whole
     */
    public static <T> Reading<T> read(byte[] bytes, Function<At, T> reader) {
        if (bytes.length > MOST_BYTES) {
            return Reading.refused(List.of(tooLarge(bytes.length)));
        }
        Problems problems = new Problems();
        Optional<String> text = Utf8.decode(bytes, problems);
        return text.isPresent() ? read(text.get(), reader, problems) : Reading.refused(problems.all());
    }

    /** Reads a text. */
    public static <T> Reading<T> read(String text, Function<At, T> reader) {
        return read(text, reader, new Problems());
    }

    /** What is said of a file of too many bytes. */
    public static Problem tooLarge(long bytes) {
        return new Problem("", "the file has " + bytes + " bytes", "at most " + MOST_BYTES);
    }

    private static <T> Reading<T> read(String text, Function<At, T> reader, Problems problems) {
        Optional<Json> tree = new TreeParser(problems).parse(text);
        if (tree.isEmpty()) {
            return Reading.refused(problems.all());
        }
        T value = reader.apply(new At(tree.get(), problems));
        return problems.isEmpty() ? Reading.of(value) : Reading.refused(problems.all());
    }
}
