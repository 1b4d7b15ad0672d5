package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import org.junit.jupiter.api.Test;

/** A file with ten mistakes of ten kinds, and the ten sentences that answer it, read by eye. */
final class TenMistakesTest {
    private static final Path FOLDER = Path.of("src/test/resources/lungfish/roomfile");

    private static List<Problem> problems() {
        return RoomFiles.open(FOLDER.resolve("ten-mistakes.room.json"), CatalogueFiles.load())
                .problems();
    }

    @Test
    void tenMistakesAreAnsweredByTenProblemsWithPlaces() throws IOException {
        assertThat(problems())
                .extracting(Problem::sentence)
                .containsExactlyElementsOf(Files.readAllLines(FOLDER.resolve("ten-mistakes.txt")));
    }

    @Test
    void theHandbookShowsTheSameSentences() throws IOException {
        assertThat(Files.readString(Path.of("docs/room-file.md")))
                .contains(Files.readString(FOLDER.resolve("ten-mistakes.txt")));
    }
}
