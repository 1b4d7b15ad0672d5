package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the drill card that an outage writes beside its answer. */
final class CardFileTest {
    @TempDir
    private Path folder;

    private static Said outage(String card, String... further) {
        String[] words = new String[further.length + 4];
        words[0] = "outage";
        words[1] = "starting-out";
        words[2] = "--card";
        words[3] = card;
        System.arraycopy(further, 0, words, 4, further.length);
        return Said.by(words);
    }

    private static String text(Path file) throws IOException {
        try (PDDocument read = Loader.loadPDF(file.toFile())) {
            assertThat(read.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(read);
        }
    }

    @Test
    void itIsWrittenBesideTheAnswer() throws IOException {
        Path file = folder.resolve("card.pdf");
        Said said = outage(file.toString());
        assertThat(said.exit()).isEqualTo(Exit.FINE);
        assertThat(said.out()).contains("Estimates to plan by", "The drill card is in " + file);
        assertThat(text(file)).contains("If the air stops", "Starting out");
    }

    @Test
    void itLeavesTheJsonAsItIs() throws IOException {
        Path file = folder.resolve("card.pdf");
        Said with = outage(file.toString(), "--json");
        assertThat(with.out())
                .isEqualTo(Said.by("outage", "starting-out", "--json").out());
        assertThat(text(file)).contains("Starting out");
    }

    @Test
    void twoAreTheSameToTheByte() throws IOException {
        outage(folder.resolve("one.pdf").toString());
        outage(folder.resolve("other.pdf").toString());
        assertThat(folder.resolve("one.pdf")).hasSameBinaryContentAs(folder.resolve("other.pdf"));
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        Said said = outage(folder.resolve("nowhere").resolve("card.pdf").toString());
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err() + said.out()).contains("card.pdf cannot be written: its folder is not there");
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Path sub = Files.createDirectory(folder.resolve("cards.pdf"));
        Said said = outage(sub.toString());
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err() + said.out()).contains("it is a folder");
    }

    @Test
    void noFileOfAnotherKindIsWrittenOver() throws IOException {
        Path room = Files.writeString(folder.resolve("my.room.json"), "{}");
        Said said = outage(room.toString());
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err() + said.out()).contains("does not end with .pdf");
        assertThat(room).hasContent("{}");
    }

    @Test
    void anOutageThatIsNotUnderstoodWritesNothing() {
        Path file = folder.resolve("card.pdf");
        assertThat(outage(file.toString(), "--fail", "moon").exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(file).doesNotExist();
    }
}
