package lungfish.networkfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import lungfish.network.AnyNetwork;
import lungfish.network.Network;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written reads as it was, and obeys the published schema. */
final class NetworkWriterTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonSchema schema() throws IOException {
        JsonNode text =
                MAPPER.readTree(Path.of("docs/schemas/network.schema.json").toFile());
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }

    @Property(tries = 100)
    void whatWasWrittenReadsAsAnEqualNetwork(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Network network = AnyNetwork.of(seed);
        String text = NetworkWriter.text(network);
        assertThat(NetworkReader.read(text).orThrow()).isEqualTo(network);
        assertThat(NetworkWriter.text(NetworkReader.read(text).orThrow())).isEqualTo(text);
    }

    @Property(tries = 30)
    void whatIsWrittenObeysTheSchema(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) throws IOException {
        JsonNode text = MAPPER.readTree(NetworkWriter.text(AnyNetwork.of(seed)));
        assertThat(schema().validate(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"02-dead-end-chain.json", "07-undersized.json", "13-weaker-blower-shut.json"})
    void theReferenceNetworksObeyTheSchema(String name) throws IOException {
        try (InputStream in = NetworkWriterTest.class.getResourceAsStream(name)) {
            assertThat(schema().validate(MAPPER.readTree(in).get("network"))).isEmpty();
        }
    }

    @Test
    void theSchemaKnowsNoFurtherKeys() throws IOException {
        JsonNode text =
                MAPPER.readTree(NetworkWriter.text(AnyNetwork.of(1)).replaceFirst("\"length_m\"", "\"lenght_m\""));
        assertThat(schema().validate(text)).isNotEmpty();
    }
}
