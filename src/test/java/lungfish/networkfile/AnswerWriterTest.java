package lungfish.networkfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import lungfish.network.Solver;
import org.junit.jupiter.api.Test;

/** The keys that the format promises, and what stands where there is nothing to say. */
final class AnswerWriterTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String NETWORK =
            """
            {"format": "air-network-1", "nodes": ["a", "b", "dead"],
             "pipes": [{"id": "p", "from": "a", "to": "b", "length_m": 1, "bore_m": 0.02},
                       {"id": "still", "from": "b", "to": "dead", "length_m": 1, "bore_m": 0.02}],
             "drops": [{"id": "wishes", "node": "b", "valve_k": 1e11, "depth_m": 0.3, "target_m3s": 1e-4},
                       {"id": "takes", "node": "b", "valve_k": 1e11, "depth_m": 0.3}],
             "sources": [{"id": "s", "node": "a", "type": "fixed", "gauge_pa": 5000}]}""";

    private static JsonNode answer(String network) throws IOException {
        Solver solver = Solver.of(NetworkReader.read(network).orThrow());
        return MAPPER.readTree(AnswerWriter.text(Map.of("as_set", solver.asSet(), "tuned", solver.tuned())));
    }

    private static List<String> keys(JsonNode node) {
        return node.properties().stream().map(Map.Entry::getKey).toList();
    }

    @Test
    void asSetHasItsKeys() throws IOException {
        JsonNode asSet = answer(NETWORK).get("as_set");
        assertThat(keys(asSet))
                .containsExactly(
                        "ok",
                        "mode",
                        "iterations",
                        "ambient_pa",
                        "total_flow_m3s",
                        "nodes",
                        "pipes",
                        "drops",
                        "sources",
                        "quality");
        assertThat(keys(asSet.at("/nodes/a"))).containsExactly("gauge_pa");
        assertThat(keys(asSet.at("/pipes/p"))).containsExactly("free_m3s", "re", "darcy_f", "regime", "dp_pa");
        assertThat(keys(asSet.at("/drops/takes")))
                .containsExactly("free_m3s", "tap_gauge_pa", "opens_at_gauge_pa", "over_target", "state");
        assertThat(keys(asSet.at("/sources/s"))).containsExactly("gauge_pa", "free_m3s", "inside_curve", "shut");
        assertThat(keys(asSet.at("/quality"))).containsExactly("max_mass_imbalance_over_total", "max_pipe_residual_pa");
    }

    @Test
    void tunedAddsItsKeys() throws IOException {
        JsonNode tuned = answer(NETWORK).get("tuned");
        assertThat(keys(tuned)).contains("required_gauge_pa", "index_drop", "headroom_m3s", "feasible", "why_not");
        assertThat(keys(tuned.at("/drops/wishes"))).contains("spare_pa", "tuned_valve_k");
        assertThat(keys(tuned.at("/sources/s")))
                .contains("asked_m3s", "gives_m3s", "headroom_m3s", "pressure_at_asked_flow_pa");
        assertThat(tuned.get("index_drop").textValue()).isEqualTo("wishes");
    }

    @Test
    void whatDoesNotExistIsNull() throws IOException {
        JsonNode both = answer(NETWORK);
        assertThat(both.at("/as_set/drops/takes/over_target").isNull()).isTrue();
        assertThat(both.at("/as_set/pipes/still/darcy_f").isNull()).isTrue();
        assertThat(both.at("/as_set/pipes/still/regime").textValue()).isEqualTo("still");
        assertThat(both.at("/tuned/drops/takes/spare_pa").isNull()).isTrue();
        assertThat(both.at("/tuned/drops/takes/state").textValue()).isEqualTo("closed");
        assertThat(both.at("/tuned/sources/s/gives_m3s").isNull()).isTrue();
        assertThat(both.at("/tuned/headroom_m3s").isNull()).isTrue();
    }

    @Test
    void whatCannotBeSolvedIsAReasonAndNothingElse() throws IOException {
        JsonNode both = answer(NETWORK.replace("\"id\": \"p\", \"from\": \"a\"", "\"id\": \"p\", \"from\": \"dead\""));
        assertThat(keys(both.get("as_set"))).containsExactly("ok", "reason");
        assertThat(both.at("/as_set/ok").booleanValue()).isFalse();
        assertThat(both.at("/as_set/reason").textValue()).contains("'wishes'");
    }
}
