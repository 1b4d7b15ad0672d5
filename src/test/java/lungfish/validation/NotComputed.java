package lungfish.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A published value that stands beside no figure of ours.
 *
 * @param printed the value as the file writes it
 * @param why it is held in another way, or not at all
 */
record NotComputed(
        String id, String what, Inputs inputs, String printed, String unit, String source, String status, String why) {
    private static final String FILE = "not-computed.json";

    /** All of them, in the order of their file. */
    static List<NotComputed> all() {
        List<NotComputed> all = new ArrayList<>();
        PublishedFile.nodes(FILE).forEach(node -> all.add(of(node)));
        return List.copyOf(all);
    }

    private static NotComputed of(JsonNode node) {
        return new NotComputed(
                PublishedFile.text(node, "id"),
                PublishedFile.text(node, "what"),
                new Inputs(node.required("inputs")),
                node.required("published").asText(),
                PublishedFile.text(node, "unit"),
                PublishedFile.text(node, "source"),
                PublishedFile.text(node, "status"),
                PublishedFile.text(node, "why"));
    }
}
