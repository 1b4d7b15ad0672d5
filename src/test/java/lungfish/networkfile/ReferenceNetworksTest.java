package lungfish.networkfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import lungfish.network.Answer;
import lungfish.network.Network;
import lungfish.network.Solver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Three networks whose answers were made by another program, with other equations for the same laws: a dead-end main,
 * a blower too small, two blowers of which one is shut. Read and written as files are.
 */
final class ReferenceNetworksTest {
    /**
     * The other program stops where rounding stops it, at about 1e-10 of its largest figures; a small difference of two
     * large ones (a pipe of the ring, the spare of a neighbour) keeps that as a share of the large ones.
     */
    private static final double TWO_PROGRAMS = 1e-8;

    /** Largest of the figures that the differences are taken of: pressures of 1e4 Pa, flows of 1e-3 m³/s. */
    private static final Map<String, Double> SCALE = Map.of("pa", 1e4, "m3s", 1e-3);

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonNode resource(String name) throws IOException {
        try (InputStream in = ReferenceNetworksTest.class.getResourceAsStream(name)) {
            return MAPPER.readTree(in);
        }
    }

    private static JsonNode solved(JsonNode network) throws IOException {
        Network read = NetworkReader.read(network.toString()).orThrow();
        Solver solver = Solver.of(read);
        Map<String, Answer> answers = new LinkedHashMap<>();
        answers.put("as_set", solver.asSet());
        answers.put("tuned", solver.tuned());
        return MAPPER.readTree(AnswerWriter.text(answers));
    }

    @ParameterizedTest
    @ValueSource(strings = {"02-dead-end-chain.json", "07-undersized.json", "13-weaker-blower-shut.json"})
    void anotherProgramComesToTheSameAnswer(String name) throws IOException {
        JsonNode file = resource(name);
        JsonNode ours = solved(file.get("network"));
        int compared = 0;
        for (String mode : new String[] {"as_set", "tuned"}) {
            compared += agree(mode, ours.get(mode), file.get("answers").get(mode));
        }
        assertThat(compared).as("figures compared").isGreaterThan(500);
    }

    /** Compares what both have, but for counts of steps and residuals, which are each program's own. */
    private static int agree(String where, JsonNode ours, JsonNode theirs) {
        int compared = 0;
        for (Map.Entry<String, JsonNode> each : ours.properties()) {
            JsonNode other = theirs.path(each.getKey());
            boolean own = each.getKey().equals("iterations") || each.getKey().equals("quality");
            if (!own && !other.isMissingNode()) {
                compared += agreeAt(where + "/" + each.getKey(), each.getKey(), each.getValue(), other);
            }
        }
        return compared;
    }

    private static int agreeAt(String where, String key, JsonNode ours, JsonNode theirs) {
        if (ours.isObject()) {
            return agree(where, ours, theirs);
        }
        if (ours.isNumber()) {
            String kind = key.substring(key.lastIndexOf('_') + 1);
            double allowed = TWO_PROGRAMS * Math.max(Math.abs(theirs.doubleValue()), SCALE.getOrDefault(kind, 1.0));
            assertThat(ours.doubleValue()).as(where).isCloseTo(theirs.doubleValue(), within(allowed));
        } else {
            assertThat(ours).as(where).isEqualTo(theirs);
        }
        return 1;
    }
}
