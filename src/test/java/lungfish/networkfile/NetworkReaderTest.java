package lungfish.networkfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.json.Problem;
import lungfish.network.Check;
import lungfish.network.Conditions;
import lungfish.network.Network;
import lungfish.network.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NetworkReaderTest {
    /** The least that may be left in. */
    private static final String BARE =
            """
            {"format": "air-network-1", "nodes": ["a", "b"],
             "pipes": [{"id": "p", "from": "a", "to": "b", "length_m": 1, "bore_m": 0.02}],
             "drops": [{"id": "d", "node": "b", "valve_k": 1e10, "depth_m": 0.3}],
             "sources": [{"id": "s", "node": "a", "type": "fixed", "gauge_pa": 5000}]}""";

    private static List<String> paths(String text) {
        return NetworkReader.read(text).problems().stream().map(Problem::path).toList();
    }

    private static Network read(String text) {
        return NetworkReader.read(text).orThrow();
    }

    @Test
    void whatIsLeftOutHasItsDefault() {
        Network network = read(BARE);
        assertThat(network.conditions()).isEqualTo(Conditions.usual());
        assertThat(network.pipes().get(0).roughnessM()).isZero();
        assertThat(network.pipes().get(0).kSum()).isZero();
        assertThat(network.drops().get(0).valveKOpen()).isZero();
        assertThat(network.drops().get(0).airline()).isEmpty();
        assertThat(network.drops().get(0).check()).isEmpty();
        assertThat(network.drops().get(0).device()).isEmpty();
        assertThat(network.drops().get(0).targetM3PerS()).isEqualTo(OptionalDouble.empty());
        assertThat(network.title()).isEmpty();
    }

    @Test
    void thePipeIsAsWarmAsTheRoomUnlessSaid() {
        Network network = read(BARE.replace("\"nodes\"", "\"room\": {\"temperature_k\": 300}, \"nodes\""));
        assertThat(network.conditions().pipeTemperatureK()).isEqualTo(300.0);
    }

    @Test
    void anAltitudeIsAPressure() {
        // ISO 2533 at 1000 m: 898.76 hPa
        Network network = read(BARE.replace("\"nodes\"", "\"room\": {\"altitude_m\": 1000}, \"nodes\""));
        assertThat(network.conditions().ambientPa()).isBetween(89_870.0, 89_880.0);
    }

    @Test
    void aCheckOfNullIsNone() {
        String none = BARE.replace("\"depth_m\"", "\"check\": null, \"depth_m\"");
        String some = BARE.replace("\"depth_m\"", "\"check\": {\"open_pa\": 300}, \"depth_m\"");
        assertThat(read(none).drops().get(0).check()).isEmpty();
        assertThat(read(some).drops().get(0).check()).isEqualTo(Optional.of(new Check(300.0, 0.0)));
    }

    @Test
    void aBlowerHasACurveAndOneMachine() {
        String text = BARE.replace("\"fixed\", \"gauge_pa\": 5000", "\"blower\", \"curve\": [[0, 0.001], [9000, 0]]");
        Source.Blower blower = (Source.Blower) read(text).sources().get(0);
        assertThat(blower.count()).isEqualTo(1);
        assertThat(blower.curve().shutGaugePa()).isEqualTo(9000.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            # what is replaced | by what | place of the problem
            "length_m": 1, | "length_m": -1, | /pipes/0/length_m
            "length_m": 1, | "length_m": NaN, | /pipes/0/length_m
            "length_m": 1, | "length_m": 1e400, | /pipes/0/length_m
            "length_m": 1, | "length_m": "1", | /pipes/0/length_m
            "length_m": 1, | | /pipes/0/length_m
            "bore_m": 0.02 | "bore_m": 0.0004 | /pipes/0/bore_m
            "bore_m": 0.02 | "bore_m": 1.1 | /pipes/0/bore_m
            "bore_m": 0.02 | "bore_m": 0.02, "roughness_m": 0.01 | /pipes/0/roughness_m
            "bore_m": 0.02 | "bore_m": 0.02, "k": 1 | /pipes/0/k
            "bore_m": 0.02 | "bore_m": 0.02, "bore_m": 0.02 | /pipes/0/bore_m
            "to": "b" | "to": "c" | /pipes/0/to
            "node": "b" | "node": "c" | /drops/0/node
            "node": "a" | "node": "c" | /sources/0/node
            "nodes": ["a", "b"] | "nodes": ["a", "b", "a"] | /nodes/2
            "valve_k": 1e10 | "valve_k": -1 | /drops/0/valve_k
            "depth_m": 0.3 | "depth_m": -0.3 | /drops/0/depth_m
            "depth_m": 0.3 | "depth_m": 0.3, "target_m3s": -1 | /drops/0/target_m3s
            "depth_m": 0.3 | "depth_m": 0.3, "device": null | /drops/0/device
            "gauge_pa": 5000 | "gauge_pa": -101325 | /sources/0/gauge_pa
            "type": "fixed" | "type": "fan" | /sources/0/type
            "format": "air-network-1" | "format": "air-network-2" | /format
            "nodes" | "room": {"altitude_m": 0, "ambient_pa": 1e5}, "nodes" | /room/ambient_pa
            "nodes" | "room": {"temperature_k": 0}, "nodes" | /room/temperature_k
            "nodes" | "water": {"density": 998}, "nodes" | /water/density
            "nodes" | "conventions": {"log_term": 1}, "nodes" | /conventions/log_term
            """)
    void aMistakeIsToldWithItsPlace(String part, String mistake, String path) {
        String text = BARE.replace(part, mistake == null ? "" : mistake);
        assertThat(paths(text)).containsExactly(path);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            [[0, 1]] | /sources/0/curve
            [[0, 1], [0, 0]] | /sources/0/curve
            [[0, 1], [5, 2]] | /sources/0/curve
            [[0, 1], [5]] | /sources/0/curve/1
            [[0, 1], [5, -1]] | /sources/0/curve/1/1
            """)
    void aCurveThatIsNoneIsTold(String curve, String path) {
        String text = BARE.replace("\"fixed\", \"gauge_pa\": 5000", "\"blower\", \"curve\": " + curve);
        assertThat(paths(text)).containsExactly(path);
    }

    @Test
    void everyProblemIsToldAtOnce() {
        String text =
                """
                {"format": "air-network-1", "nodes": ["a", "a"],
                 "pipes": [{"id": "p", "from": "a", "to": "z", "length_m": -1, "bore_m": 0.02},
                           {"id": "p", "from": "a", "to": "a", "length_m": 1, "bore_m": 2}],
                 "drops": [{"id": "d", "node": "y", "valve_k": 1e10, "deep_m": 0.3}],
                 "sources": [{"id": "s", "node": "a", "type": "blower", "curve": [], "count": 0}], "more": 1}""";
        assertThat(paths(text))
                .containsExactlyInAnyOrder(
                        "/nodes/1",
                        "/pipes/0/to",
                        "/pipes/0/length_m",
                        "/pipes/1/id",
                        "/pipes/1/bore_m",
                        "/drops/0/node",
                        "/drops/0/depth_m",
                        "/drops/0/deep_m",
                        "/sources/0/curve",
                        "/sources/0/count",
                        "/more");
    }

    @Test
    void aDanglingNameIsToldWithTheNearestOne() {
        List<Problem> problems = NetworkReader.read(BARE.replace("\"to\": \"b\"", "\"to\": \"B\""))
                .problems();
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.found()).isEqualTo("there is no node \"B\"");
            assertThat(problem.expected()).contains("\"a\"");
        });
    }

    @Test
    void textThatIsNoJsonIsAProblemAndNoFault() {
        assertThat(paths("{\"format\":")).isNotEmpty();
        assertThat(paths("[]")).isNotEmpty();
        assertThat(NetworkReader.read(new byte[] {(byte) 0xff, '{'}).problems()).isNotEmpty();
        assertThat(NetworkReader.read(BARE.getBytes(StandardCharsets.UTF_8)).problems())
                .isEmpty();
    }
}
