package lungfish.report;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.drawing.StandingPicture;
import lungfish.json.JsonWriter;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomReader;
import lungfish.standing.Redundancy;
import lungfish.standing.StandingAnswer;
import org.junit.jupiter.api.Test;

/** Figures by hand in RedundancyTest: two tanks, 34.9 h a year by the machine, 6 h by the mains. */
final class StandingReportTest {
    private static final Quantities METRIC = new Quantities(DisplayUnits.METRIC, "");

    @Test
    void theTextSaysHoursLossAndWhatTakesAllAtOnce() {
        assertThat(text(answer(room().with(aBlower("b")).build())).replaceAll("\\s+", " "))
                .contains("One blower, planned: a tank is without air about 41 h a year: 35 h by machines that fail")
                .contains("both tanks for 3.3 days")
                .contains("none; both tanks keep 50 % for 3.3 days")
                .contains("The one pipe takes both tanks")
                .contains("do not trust the hours")
                .contains("watch the fish");
    }

    @Test
    void theLinesFitOnAScreenAndSayNothingThatIsNoNumber() {
        for (String name : DemoRooms.NAMES) {
            assertThat(text(answer(demo(name))).lines())
                    .allMatch(line -> line.length() <= 120)
                    .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
        }
    }

    @Test
    void theJsonFitsItsSchema() throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Path.of("docs/schemas/standing.schema.json").toUri());
        for (String name : DemoRooms.NAMES) {
            assertThat(schema.validate(json(answer(demo(name))))).isEmpty();
        }
    }

    @Test
    void theJsonHoldsTheFiguresInSiUnits() throws IOException {
        JsonNode json = json(answer(room().with(aBlower("b")).build()));
        JsonNode one = json.path("ways").path(0);
        assertThat(one.path("way").textValue()).isEqualTo("one_blower");
        assertThat(one.path("as_drawn").booleanValue()).isTrue();
        assertThat(one.path("without_air_s_per_year").doubleValue() / 3600).isBetween(40.85, 40.95);
        assertThat(one.path("one_failure").path("tanks_without_air").intValue()).isEqualTo(2);
        assertThat(one.path("one_failure").path("share_of_tanks").doubleValue()).isEqualTo(1);
        assertThat(one.path("common_causes")
                        .path(1)
                        .path("without_air_s_per_year")
                        .isNull())
                .isTrue();
    }

    @Test
    void theRowsOfThePictureSayTheSameWithoutIt() {
        List<StandingPicture.Row> rows =
                new StandingWords(answer(room().with(aBlower("b")).build()), METRIC).rows();
        assertThat(rows).hasSize(5);
        assertThat(rows.get(0).says())
                .isEqualTo("One blower (planned): 41 h a year; one failure takes both tanks for 3.3 days");
    }

    private static String text(StandingAnswer answer) {
        Page page = new Page();
        new StandingReport(METRIC).on(page, answer);
        return page.text();
    }

    private static JsonNode json(StandingAnswer answer) throws IOException {
        return new ObjectMapper().readTree(JsonWriter.text(out -> StandingJson.node(out, answer)));
    }

    private static StandingAnswer answer(Room room) {
        return Redundancy.of(room, CatalogueFiles.load(), OptionalDouble.of(60), OptionalDouble.of(20));
    }

    private static Room demo(String name) {
        return new RoomReader(CatalogueFiles.load()).read(DemoRooms.bytes(name)).orThrow();
    }

    private static RoomBuilder room() {
        return aRoom().with(aRack("A")
                .shelf(0.5, aTank("T1").with(anOutlet("o1")), aTank("T2").with(anOutlet("o2"))));
    }
}
