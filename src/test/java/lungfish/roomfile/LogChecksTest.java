package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Reading;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

final class LogChecksTest {
    private static final RoomReader READER = new RoomReader(CatalogueFiles.load());

    private static String withLog(String log) {
        String text = RoomWriter.text(Rooms.small());
        return text.substring(0, text.lastIndexOf('}')) + ", \"log\": {" + log + "}}";
    }

    private static List<Problem> problems(String log) {
        return READER.read(withLog(log)).problems();
    }

    private static Room room(String log) {
        return READER.read(withLog(log)).value().orElseThrow();
    }

    @Test
    void aDayThatNoCalendarHasIsTold() {
        assertThat(problems("\"ticks\": [{\"step\": \"leak-test\", \"on\": \"2026-02-30\"}]"))
                .extracting(Problem::path, Problem::found, Problem::expected)
                .containsExactly(
                        tuple("/log/ticks/0/on", "found \"2026-02-30\"", "a day of the calendar, such as 2026-03-01"));
    }

    @Test
    void whatIsReadOfAnOutletThatIsGoneIsKept() {
        Room room = room("\"readings\": [{\"id\": \"r1\", \"on\": \"2026-03-01\","
                + " \"read\": {\"kind\": \"jar\", \"outlet\": \"long-gone\", \"seconds_s\": 22}}]");
        assertThat(room.log().readings()).singleElement().satisfies(reading -> assertThat(reading.measured())
                .isInstanceOfSatisfying(
                        Reading.Jar.class, jar -> assertThat(jar.outlet()).hasToString("long-gone")));
    }

    @Test
    void aGaugeThatRisesWhileNothingBlowsIsTold() {
        assertThat(problems("\"readings\": [{\"id\": \"r1\", \"on\": \"2026-03-01\","
                        + " \"read\": {\"kind\": \"fall\", \"from_pa\": 9000, \"to_pa\": 9500, \"seconds_s\": 60}}]"))
                .extracting(Problem::path)
                .containsExactly("/log/readings/0/read/to_pa");
    }

    @Test
    void aStepTickedTwiceAndAnIdTakenTwiceAreTold() {
        String service = "{\"id\": \"s1\", \"on\": \"2026-03-01\", \"kind\": \"drained\"}";
        String tick = "{\"step\": \"bleed\", \"on\": \"2026-03-01\"}";
        assertThat(problems(
                        "\"services\": [" + service + ", " + service + "], \"ticks\": [" + tick + ", " + tick + "]"))
                .extracting(Problem::path)
                .containsExactlyInAnyOrder("/log/services/1/id", "/log/ticks/1/step");
    }

    @Test
    void aReadingOfAnUnknownKindIsTold() {
        assertThat(problems(
                        "\"readings\": [{\"id\": \"r1\", \"on\": \"2026-03-01\", \"read\": {\"kind\": \"guess\"}}]"))
                .extracting(Problem::path)
                .containsExactly("/log/readings/0/read/kind");
    }
}
