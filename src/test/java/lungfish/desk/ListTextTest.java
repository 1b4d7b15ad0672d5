package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the text of a list is written in its file. */
final class ListTextTest {
    private static final String TEXT = "Tank;Länge\nÖl;25 °C\n";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    UTF-8,        '',      UTF-8
                    UTF-8,        \ufeff,  UTF-8
                    windows-1252, '',      Windows-1252
                    UTF-16LE,     \ufeff,  UTF-16
                    UTF-16BE,     \ufeff,  UTF-16
                    """)
    void isFoundOut(String charset, String mark, String told) {
        byte[] bytes = (mark + TEXT).getBytes(Charset.forName(charset));
        assertThat(ListText.of(bytes)).isEqualTo(new ListText(TEXT, told));
    }

    private static Desk desk(Path folder) {
        return Desks.in(folder, Hands.ofTheCaller()).withDemo("starting-out");
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        new TextFiles(desk(folder)).read(folder.resolve("none.csv"), (text, trouble) -> {
            assertThat(text).isEmpty();
            assertThat(trouble).isEqualTo("none.csv cannot be read: it is not there. Choose another file.");
        });
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        Path file = folder.resolve("list.csv");
        new TextFiles(desk(folder))
                .write(file, TEXT, trouble -> assertThat(trouble).isEmpty());
        assertThat(Files.readString(file, StandardCharsets.UTF_8)).isEqualTo(TEXT);
    }
}
