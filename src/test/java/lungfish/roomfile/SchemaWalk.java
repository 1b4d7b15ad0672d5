package lungfish.roomfile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Finds, for each kind of place in a document, the part of the schema that speaks of it. */
final class SchemaWalk {
    private final JsonNode root;
    private final Map<String, Place> places = new LinkedHashMap<>();

    /** One place in the document for each kind of place, with its part of the schema. */
    record Place(String pointer, JsonNode schema) {}

    SchemaWalk(JsonNode schema, JsonNode document) {
        this.root = schema;
        visit("", "", schema, document);
    }

    Iterable<Place> places() {
        return places.values();
    }

    static Set<String> keys(JsonNode schema) {
        Set<String> keys = new TreeSet<>();
        schema.path("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private void visit(String pointer, String kind, JsonNode schema, JsonNode node) {
        JsonNode meant = resolved(schema, node);
        places.putIfAbsent(kind, new Place(pointer, meant));
        if (node.isObject()) {
            Iterator<String> keys = node.fieldNames();
            while (keys.hasNext()) {
                String key = keys.next();
                visit(
                        pointer + "/" + key,
                        kind + "/" + key,
                        meant.path("properties").path(key),
                        node.get(key));
            }
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            visit(pointer + "/" + i, kind + "/*", meant.path("items"), node.get(i));
        }
    }

    private JsonNode resolved(JsonNode schema, JsonNode node) {
        if (schema.has("$ref")) {
            return resolved(root.at(schema.get("$ref").asText().substring(1)), node);
        }
        for (JsonNode choice : schema.path("oneOf")) {
            JsonNode meant = resolved(choice, node);
            if (fits(meant, node)) {
                return meant;
            }
        }
        return schema;
    }

    private static boolean fits(JsonNode schema, JsonNode node) {
        Set<String> keys = new TreeSet<>();
        node.fieldNames().forEachRemaining(keys::add);
        JsonNode constant = schema.path("properties").path("kind").path("const");
        return keys(schema).containsAll(keys) && (constant.isMissingNode() || constant.equals(node.get("kind")));
    }
}
