package lungfish.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Writes our canonical JSON: the same values always give the same text. Keys stand in the order in which they are
 * written, two spaces indent, numbers as {@link NumberText}, lines end with a line feed, the last one too. What is
 * absent is left out: an empty optional, and an empty list written by a {@code maybe} method.
 */
public final class JsonWriter {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator out;
    private final Layout layout;

    private JsonWriter(JsonGenerator out, Layout layout) {
        this.out = out;
        this.layout = layout;
    }

    /** The text of one object. */
    public static String text(Consumer<JsonWriter> fields) {
        StringWriter text = new StringWriter();
        Layout layout = new Layout();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            out.setPrettyPrinter(layout);
            new JsonWriter(out, layout).braces(fields);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string writer has no I/O
        }
        return text.append('\n').toString();
    }

    public JsonWriter text(String key, String value) {
        return told(() -> out.writeStringField(key, value));
    }

    public JsonWriter maybeText(String key, Optional<String> value) {
        value.ifPresent(there -> text(key, there));
        return this;
    }

    public JsonWriter word(String key, Enum<?> value) {
        return text(key, At.wordOf(value));
    }

    public JsonWriter maybeWord(String key, Optional<? extends Enum<?>> value) {
        value.ifPresent(there -> word(key, there));
        return this;
    }

    /**
     * Writes a number.
     *
     * @throws IllegalArgumentException for NaN and infinities
     */
    public JsonWriter number(String key, double value) {
        return told(() -> {
            out.writeFieldName(key);
            out.writeNumber(NumberText.of(value));
        });
    }

    public JsonWriter maybeNumber(String key, OptionalDouble value) {
        value.ifPresent(there -> number(key, there));
        return this;
    }

    public JsonWriter whole(String key, long value) {
        return told(() -> out.writeNumberField(key, value));
    }

    public JsonWriter truth(String key, boolean value) {
        return told(() -> out.writeBooleanField(key, value));
    }

    public JsonWriter maybeTruth(String key, Optional<Boolean> value) {
        value.ifPresent(there -> truth(key, there));
        return this;
    }

    /** The word null, where "none" must be told from "not said". */
    public JsonWriter nothing(String key) {
        return told(() -> out.writeNullField(key));
    }

    public JsonWriter object(String key, Consumer<JsonWriter> fields) {
        return told(() -> {
            out.writeFieldName(key);
            braces(fields);
        });
    }

    public <T> JsonWriter maybeObject(String key, Optional<T> value, BiConsumer<JsonWriter, T> fields) {
        value.ifPresent(there -> object(key, inner -> fields.accept(inner, there)));
        return this;
    }

    /** An object on one line. */
    public JsonWriter flatObject(String key, Consumer<JsonWriter> fields) {
        return told(() -> {
            out.writeFieldName(key);
            onOneLine(() -> braces(fields));
        });
    }

    /** An object on one line, where there is one. */
    public <T> JsonWriter maybeFlatObject(String key, Optional<T> value, BiConsumer<JsonWriter, T> fields) {
        value.ifPresent(there -> flatObject(key, inner -> fields.accept(inner, there)));
        return this;
    }

    /** A list of objects. */
    public <T> JsonWriter objects(String key, List<T> items, BiConsumer<JsonWriter, T> fields) {
        return list(key, items, item -> braces(inner -> fields.accept(inner, item)));
    }

    /** A list of objects; nothing where it is empty. */
    public <T> JsonWriter maybeObjects(String key, List<T> items, BiConsumer<JsonWriter, T> fields) {
        return items.isEmpty() ? this : objects(key, items, fields);
    }

    /** A list of objects, each on one line. */
    public <T> JsonWriter flatObjects(String key, List<T> items, BiConsumer<JsonWriter, T> fields) {
        return list(key, items, item -> onOneLine(() -> braces(inner -> fields.accept(inner, item))));
    }

    /** A list of objects, each on one line; nothing where it is empty. */
    public <T> JsonWriter maybeFlatObjects(String key, List<T> items, BiConsumer<JsonWriter, T> fields) {
        return items.isEmpty() ? this : flatObjects(key, items, fields);
    }

    /** A list of rows of numbers, a row a line. */
    public JsonWriter rows(String key, List<double[]> rows) {
        return list(key, rows, row -> onOneLine(() -> numbers(row)));
    }

    /** A list of numbers, on one line. */
    public JsonWriter numbers(String key, double[] values) {
        return told(() -> {
            out.writeFieldName(key);
            onOneLine(() -> numbers(values));
        });
    }

    /** A list of texts, on one line. */
    public JsonWriter texts(String key, List<String> values) {
        return told(() -> {
            out.writeFieldName(key);
            onOneLine(() -> out.writeArray(values.toArray(String[]::new), 0, values.size()));
        });
    }

    /** A list of texts, on one line; nothing where it is empty. */
    public JsonWriter maybeTexts(String key, List<String> values) {
        return values.isEmpty() ? this : texts(key, values);
    }

    private <T> JsonWriter list(String key, List<T> items, ItemStep<T> each) {
        return told(() -> {
            out.writeArrayFieldStart(key);
            for (T item : items) {
                each.run(item);
            }
            out.writeEndArray();
        });
    }

    private void braces(Consumer<JsonWriter> fields) throws IOException {
        out.writeStartObject();
        fields.accept(this);
        out.writeEndObject();
    }

    private void numbers(double[] row) throws IOException {
        out.writeStartArray();
        for (double x : row) {
            out.writeNumber(NumberText.of(x));
        }
        out.writeEndArray();
    }

    private void onOneLine(Step step) throws IOException {
        layout.beginFlat();
        step.run();
        layout.endFlat();
    }

    private JsonWriter told(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string writer has no I/O
        }
        return this;
    }

    private interface Step {
        void run() throws IOException;
    }

    private interface ItemStep<T> {
        void run(T item) throws IOException;
    }
}
