package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;
import lungfish.logbook.Logs;
import lungfish.plan.DemoPlans;
import lungfish.roomfile.RoomWriter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts about the report of a room as a file. */
final class ReportCommandTest {
    @TempDir
    private Path folder;

    private byte[] written(String room, String name, String... further) {
        Path file = folder.resolve(name);
        String[] words = new String[further.length + 4];
        words[0] = "report";
        words[1] = room;
        words[2] = "--to";
        words[3] = file.toString();
        System.arraycopy(further, 0, words, 4, further.length);
        Said said = Said.by(words);
        assertThat(said.err()).isEmpty();
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] elsewhere(Supplier<byte[]> writing) {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            return writing.get();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.pdf", "a.html", "a.csv", "a.svg", "a.png"})
    void theSameRoomGivesTheSameBytesEverywhere(String name) {
        byte[] here = written("garage-killifish", name);
        assertThat(elsewhere(() -> written("garage-killifish", name))).isEqualTo(here);
    }

    /** The first bytes of a file of each kind: ISO 32000, HTML Living Standard, PNG (ISO/IEC 15948), RFC 3629. */
    @ParameterizedTest
    @CsvSource({
        "a.pdf, %PDF-",
        "a.html, <!DOCTYPE html>",
        "a.PNG, \u0089PNG",
        "a.csv, \u00EF\u00BB\u00BF",
        "a.svg, <?xml"
    })
    void theEndingSaysAsWhat(String name, String begins) {
        String text = new String(written("starting-out", name), StandardCharsets.ISO_8859_1);
        assertThat(text).startsWith(begins);
    }

    @Test
    void everyPageSaysWhichItIs() throws IOException {
        try (PDDocument document = Loader.loadPDF(written("garage-killifish", "a.pdf", "--date", "2026-03-01"))) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document))
                        .contains("page " + page + " of " + pages)
                        .contains("2026-03-01");
            }
        }
    }

    /** ISO 216: A4 is 210 mm by 297 mm; ANSI Y14.1: A is 8.5 in by 11 in. A point is 1/72 inch. */
    @ParameterizedTest
    @CsvSource({"a4, 595.28", "letter, 612"})
    void thePaperIsTheOneThatWasAskedFor(String paper, double widthPt) throws IOException {
        try (PDDocument document = Loader.loadPDF(written("starting-out", "a.pdf", "--paper", paper))) {
            assertThat((double) document.getPage(0).getMediaBox().getWidth())
                    .isCloseTo(widthPt, org.assertj.core.data.Offset.offset(0.01));
        }
    }

    @Test
    void oneListAloneHasItsHeadingFirst() {
        String text = new String(written("starting-out", "a.csv", "--list", "parts"), StandardCharsets.UTF_8);
        assertThat(text).startsWith("\uFEFFFor,Part,");
    }

    @Test
    void aListThatIsNotThereIsToldWithThoseThatAre() {
        Said said = Said.by(
                "report", "starting-out", "--to", folder.resolve("a.csv").toString(), "--list", "bolts");
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).contains("there is no list \"bolts\"").contains("parts");
    }

    @Test
    void anotherEndingIsRefusedAndNothingIsWritten() throws IOException {
        Path room = folder.resolve("mine.room.json");
        Files.writeString(room, "keep me");
        Said said = Said.by("report", "starting-out", "--to", room.toString());
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).contains(".pdf or .html or .csv");
        assertThat(Files.readString(room)).isEqualTo("keep me");
    }

    /** A room with a log of a year, the newest entry of which is of 2026-01-27; its filter is due again on that day. */
    private String logged() throws IOException {
        Path room = folder.resolve("logged.room.json");
        Files.write(room, RoomWriter.bytes(Logs.aYear(DemoPlans.room("garage-killifish"), 6_730)));
        return room.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.pdf", "a.html", "a.csv"})
    void aLogGivesTheSameBytesEverywhereToo(String name) throws IOException {
        String room = logged();
        byte[] here = written(room, name);
        assertThat(elsewhere(() -> written(room, name))).isEqualTo(here);
    }

    @Test
    void aLogIsToldWithItsPictureForTheDayOfItsNewestEntry() throws IOException {
        String page = new String(written(logged(), "a.html"), StandardCharsets.UTF_8);
        assertThat(page)
                .contains("<section id=\"log\"")
                .contains("The blower will fall below what the room needs")
                .contains("Readings over time.");
    }

    /** The filter was changed on 2025-07-31 and is due after 180 days: on 2026-01-27, the day of the newest entry. */
    @Test
    void theDayThatIsAskedForSaysWhatIsDue() throws IOException {
        String room = logged();
        assertThat(new String(written(room, "a.csv", "--list", "due"), StandardCharsets.UTF_8))
                .contains("2025-07-31,2026-01-27,soon");
        assertThat(new String(written(room, "a.csv", "--list", "due", "--date", "2026-01-28"), StandardCharsets.UTF_8))
                .contains("2025-07-31,2026-01-27,overdue");
    }

    @Test
    void anEmptyLogHasNoSection() {
        assertThat(new String(written("garage-killifish", "a.html"), StandardCharsets.UTF_8))
                .doesNotContain("id=\"log\"");
    }

    @Test
    void aDayThatIsNoneIsRefused() {
        Said said = Said.by(
                "report", "starting-out", "--to", folder.resolve("a.pdf").toString(), "--date", "yesterday");
        assertThat(said.err()).contains("--date is \"yesterday\"");
    }
}
