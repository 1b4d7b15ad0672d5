package lungfish.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/** How our JSON is laid out: two spaces an indent, one key a line; flat things on one line with a space after commas. */
final class Layout implements PrettyPrinter {
    private int depth;
    private int deepestBroken = Integer.MAX_VALUE;

    /** The next value stands on one line, until {@link #endFlat}. */
    void beginFlat() {
        deepestBroken = depth;
    }

    void endFlat() {
        deepestBroken = Integer.MAX_VALUE;
    }

    private boolean broken() {
        return depth <= deepestBroken;
    }

    private void line(JsonGenerator out) throws IOException {
        out.writeRaw('\n');
        out.writeRaw("  ".repeat(depth));
    }

    private void open(JsonGenerator out, char bracket) throws IOException {
        out.writeRaw(bracket);
        depth++;
    }

    private void first(JsonGenerator out) throws IOException {
        if (broken()) {
            line(out);
        }
    }

    private void next(JsonGenerator out) throws IOException {
        if (broken()) {
            out.writeRaw(',');
            line(out);
        } else {
            out.writeRaw(", ");
        }
    }

    private void close(JsonGenerator out, char bracket, int count) throws IOException {
        boolean ownLine = broken() && count > 0;
        depth--;
        if (ownLine) {
            line(out);
        }
        out.writeRaw(bracket);
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator out) throws IOException {
        out.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator out) throws IOException {
        open(out, '{');
    }

    @Override
    public void beforeObjectEntries(JsonGenerator out) throws IOException {
        first(out);
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator out) throws IOException {
        out.writeRaw(": ");
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
        next(out);
    }

    @Override
    public void writeEndObject(JsonGenerator out, int entries) throws IOException {
        close(out, '}', entries);
    }

    @Override
    public void writeStartArray(JsonGenerator out) throws IOException {
        open(out, '[');
    }

    @Override
    public void beforeArrayValues(JsonGenerator out) throws IOException {
        first(out);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
        next(out);
    }

    @Override
    public void writeEndArray(JsonGenerator out, int values) throws IOException {
        close(out, ']', values);
    }
}
