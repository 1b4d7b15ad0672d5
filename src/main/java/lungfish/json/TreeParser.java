package lungfish.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Text to tree. What is no JSON is told with line and column, and ends the reading. */
final class TreeParser {
    /** A room nests nine deep; more than this is no file of ours. */
    static final int DEEPEST = 64;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS) // kept in the tree, so that they are told with a place
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(JsonReader.MOST_BYTES)
                    .build())
            .build();

    private final Problems problems;
    private Place here = Place.ROOT;

    TreeParser(Problems problems) {
        this.problems = problems;
    }

    Optional<Json> parse(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                problems.add(Place.ROOT, "the file is empty", "a JSON object");
                return Optional.empty();
            }
            Json root = value(parser, first, Place.ROOT);
            return nothingFollows(parser) ? Optional.of(root) : Optional.empty();
        } catch (JsonEOFException e) {
            problems.add(here, "the file ends in the middle, " + where(e), "the rest of it");
        } catch (JsonProcessingException e) {
            problems.add(here, "no valid JSON, " + where(e) + ": " + firstLine(e), "valid JSON (RFC 8259)");
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string has no I/O
        }
        return Optional.empty();
    }

    private boolean nothingFollows(JsonParser parser) throws IOException {
        here = Place.ROOT;
        if (parser.nextToken() == null) {
            return true;
        }
        problems.add(here, "more text follows after the end, " + where(parser.currentLocation()), "one JSON value");
        return false;
    }

    private Json value(JsonParser parser, @Nullable JsonToken token, Place place) throws IOException {
        here = place;
        if (token == null) {
            throw new JsonEOFException(parser, JsonToken.NOT_AVAILABLE, "ends");
        }
        return switch (token) {
            case START_OBJECT -> object(parser, place);
            case START_ARRAY -> array(parser, place);
            case VALUE_STRING -> new Json.Text(place, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(place, parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> new Json.Truth(place, token == JsonToken.VALUE_TRUE);
            case VALUE_NULL -> new Json.Null(place);
            default -> throw new IllegalStateException("no JSON value begins with " + token);
        };
    }

    private Json object(JsonParser parser, Place place) throws IOException {
        List<Json.Entry> entries = new ArrayList<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            entries.add(new Json.Entry(key, value(parser, parser.nextToken(), place.key(key))));
            here = place;
        }
        return new Json.Obj(place, entries);
    }

    private Json array(JsonParser parser, Place place) throws IOException {
        List<Json> items = new ArrayList<>();
        for (JsonToken next = parser.nextToken(); next != JsonToken.END_ARRAY; next = parser.nextToken()) {
            items.add(value(parser, next, place.item(items.size())));
            here = place;
        }
        return new Json.Arr(place, items);
    }

    private static String where(JsonProcessingException e) {
        JsonLocation location = e.getLocation();
        return location == null ? "at its end" : where(location);
    }

    private static String where(JsonLocation location) {
        return "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static String firstLine(JsonProcessingException e) {
        String line = e.getOriginalMessage().lines().findFirst().orElse("");
        return line.replaceFirst(", from `[^`]*`", ""); // the setting of a library is no news to a keeper
    }
}
