package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.JsonReader;
import lungfish.json.Problem;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schema and the reader, written apart, say the same. */
final class RoomSchemaTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNode SCHEMA = schemaText();
    private static final JsonSchema VALIDATOR =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SCHEMA);
    private static final String UNKNOWN = "zzzzzzzzzzzzzzz";

    private static JsonNode schemaText() {
        try {
            return MAPPER.readTree(Path.of("docs/schemas/room.schema.json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode fullRoom(long seed) {
        return (ObjectNode) tree(RoomWriter.text(RandomRooms.full(CATALOGUE, seed)));
    }

    private static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> demoRooms() throws IOException {
        return DemoRoomsTest.demoRooms();
    }

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    @Test
    void theSchemaIsValid() {
        JsonSchema meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(SchemaLocation.of(SchemaId.V202012));
        assertThat(meta.validate(SCHEMA)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void demoRoomsKeepTheSchema(Path file) throws IOException {
        assertThat(VALIDATOR.validate(tree(Files.readString(file)))).isEmpty();
    }

    @Property(tries = 30)
    void whatIsWrittenKeepsTheSchema(@ForAll("rooms") Room room) {
        assertThat(VALIDATOR.validate(tree(RoomWriter.text(room)))).isEmpty();
    }

    @Test
    void theReaderKnowsTheKeysOfTheSchemaAndNoOthers() {
        for (long seed = 0; seed < 6; seed++) { // several, so that each shape of tap and bleed is met
            ObjectNode room = fullRoom(seed);
            for (SchemaWalk.Place place : new SchemaWalk(SCHEMA, room).places()) {
                if (room.at(place.pointer()).isObject()) {
                    assertThat(keysOfReader(room.deepCopy(), place.pointer()))
                            .as(place.pointer())
                            .isEqualTo(SchemaWalk.keys(place.schema()));
                }
            }
        }
    }

    /** What the reader offers in the place of an unknown key. */
    private static Set<String> keysOfReader(ObjectNode room, String pointer) {
        ((ObjectNode) room.at(pointer)).put(UNKNOWN, 1);
        Problem problem = new RoomReader(CATALOGUE)
                .read(room.toString()).problems().stream()
                        .filter(each -> each.path().equals(pointer + "/" + UNKNOWN))
                        .findFirst()
                        .orElseThrow();
        String listed = problem.expected().replace("one of ", "");
        return new TreeSet<>(Arrays.asList(listed.split(", ")));
    }

    @Test
    void everyValueThatTheSchemaForbidsIsAProblemAndNoOther() {
        ObjectNode room = fullRoom(1);
        for (SchemaWalk.Place place : new SchemaWalk(SCHEMA, room).places()) {
            if (place.pointer().isEmpty()
                    || place.pointer().equals("/version")
                    || place.pointer().equals("/format")) {
                continue; // the format decides what is looked at at all
            }
            for (JsonNode value : values(place.schema())) {
                agree(replaced(room.deepCopy(), JsonPointer.compile(place.pointer()), value), place + " = " + value);
            }
            agree(removed(room.deepCopy(), JsonPointer.compile(place.pointer())), place + " removed");
        }
    }

    private static void agree(JsonNode room, String change) {
        String text = room.toString();
        boolean allowed = VALIDATOR.validate(room).isEmpty();
        boolean shaped = JsonReader.read(text, at -> at.object(RoomFormat::read))
                .problems()
                .isEmpty();
        if (allowed) {
            assertThat(shaped).as(change + ": the schema allows it").isTrue();
        } else {
            assertThat(new RoomReader(CATALOGUE).read(text).problems())
                    .as(change + ": the schema forbids it")
                    .isNotEmpty();
        }
    }

    /** Values of every type, those at the ends of the allowed range, and just beyond. */
    private static List<JsonNode> values(JsonNode schema) {
        List<JsonNode> values = new ArrayList<>();
        tree("[null, true, {}, [], 0, 1, 1.5, -1, 1e300, \"\", \" \", \"x\", \"a b\", \"ä\", \"a\\nb\", \"\\u0007\"]")
                .forEach(values::add);
        values.add(MAPPER.getNodeFactory().textNode("i".repeat(64)));
        values.add(MAPPER.getNodeFactory().textNode("i".repeat(65)));
        schema.path("enum").forEach(values::add);
        for (String end : List.of("minimum", "exclusiveMinimum", "maximum")) {
            if (schema.has(end)) {
                double x = schema.get(end).asDouble();
                for (double near : new double[] {x, Math.nextUp(x), Math.nextDown(x)}) {
                    values.add(MAPPER.getNodeFactory().numberNode(near));
                }
            }
        }
        return values;
    }

    private static JsonNode replaced(JsonNode room, JsonPointer place, JsonNode value) {
        JsonNode parent = room.at(place.head());
        String last = place.last().getMatchingProperty();
        if (parent instanceof ObjectNode object) {
            object.set(last, value);
        } else {
            ((ArrayNode) parent).set(Integer.parseInt(last), value);
        }
        return room;
    }

    private static JsonNode removed(JsonNode room, JsonPointer place) {
        if (room.at(place.head()) instanceof ObjectNode object) {
            object.remove(place.last().getMatchingProperty());
        }
        return room;
    }
}
