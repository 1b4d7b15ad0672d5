package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command on the room in docs, in which the pipe leaks. */
final class FitCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String MEASURED = "docs/measured/garage-half-a-year-on.room.json";

    private static JsonSchema schema() {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Path.of("docs/schemas/fit.schema.json").toUri());
    }

    @Test
    void theAnswerInDocsIsTheAnswer() throws IOException {
        Said said = Said.by("fit", MEASURED);

        assertThat(said.out()).isEqualTo(Files.readString(Path.of("docs/measured/garage-half-a-year-on.txt")));
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void theJsonFitsItsSchema() throws IOException {
        JsonNode answer = JSON.readTree(Said.by("fit", MEASURED, "--json").out());

        assertThat(schema().validate(answer)).isEmpty();
        assertThat(answer.at("/measured/verdict").asText()).isEqualTo("likely");
        assertThat(answer.at("/measured/suspects/0/culprit").asText()).isEqualTo("leak");
        assertThat(answer.at("/measured/next/shut").size()).isEqualTo(2);
    }

    @Test
    void aRoomInWhichNothingWasReadSaysWhatToBeginWith() throws IOException {
        assertThat(Said.by("fit", "garage-killifish").out()).startsWith("Nothing is in the log yet");
        JsonNode answer =
                JSON.readTree(Said.by("fit", "garage-killifish", "--json").out());
        assertThat(schema().validate(answer)).isEmpty();
        assertThat(answer.get("measured").isNull()).isTrue();
    }

    /** On the day on which the valves were set nothing can have changed yet. */
    @Test
    void laterDaysArePassedOver() {
        assertThat(Said.by("fit", MEASURED, "--date", "2025-06-10").out()).startsWith("Nothing is in the log yet");
        Said wrong = Said.by("fit", MEASURED, "--date", "soon");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("--date is \"soon\"", "a day such as 2026-03-01");
    }

    @Test
    void theRoomAsMeasuredIsWritten(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("as measured.room.json");
        Said said = Said.by("fit", MEASURED, "--as-measured", file.toString());

        assertThat(said.exit()).isLessThan(2);
        assertThat(Said.by("plan", file.toString()).out()).contains("as measured");
    }

    @Test
    void anotherEndingIsRefusedAndNothingWritten(@TempDir Path folder) {
        Path file = folder.resolve("room.txt");
        Said said = Said.by("fit", MEASURED, "--as-measured", file.toString());

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains(".room.json");
        assertThat(file).doesNotExist();
        assertThat(Said.by(
                                "fit",
                                "garage-killifish",
                                "--as-measured",
                                folder.resolve("a.room.json").toString())
                        .err())
                .contains("nothing was measured");
    }
}
