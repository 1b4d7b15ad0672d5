package lungfish.validation;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads a file of published rows. */
final class PublishedFile {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private PublishedFile() {}

    static List<PublishedRow> rows(String name) {
        List<PublishedRow> rows = new ArrayList<>();
        nodes(name).forEach(node -> rows.add(row(node)));
        return List.copyOf(rows);
    }

    /** The rows of a file, as they stand there. */
    static JsonNode nodes(String name) {
        try (InputStream in = PublishedFile.class.getResourceAsStream("/lungfish/published/" + name)) {
            if (in == null) {
                throw new IllegalArgumentException("no published file " + name);
            }
            return MAPPER.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    private static PublishedRow row(JsonNode node) {
        JsonNode published = node.required("published");
        return new PublishedRow(
                text(node, "id"),
                text(node, "by"),
                text(node, "what"),
                new Inputs(node.required("inputs")),
                published.doubleValue(),
                published.asText(),
                node.required("unit").textValue(),
                tolerance(node.required("tolerance")),
                text(node, "source"),
                text(node, "status"));
    }

    /** One of {"relative": x}, {"absolute": x}, {"factor": x}, each with its "why". */
    private static Tolerance tolerance(JsonNode node) {
        for (Map.Entry<String, JsonNode> each : node.properties()) {
            if (!each.getKey().equals("why")) {
                Tolerance.Kind kind = Tolerance.Kind.valueOf(each.getKey().toUpperCase(Locale.ROOT));
                return new Tolerance(kind, each.getValue().doubleValue(), text(node, "why"));
            }
        }
        throw new IllegalArgumentException("a tolerance without an amount: " + node);
    }

    /** A text that must be there. */
    static String text(JsonNode node, String name) {
        JsonNode value = node.path(name);
        if (!value.isTextual() || value.textValue().isBlank()) {
            throw new IllegalArgumentException("'" + name + "' is missing in " + node);
        }
        return value.textValue();
    }
}
