package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.choice.BlowerBench;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever may be drawn, its plan can be told. */
final class PlansOfRandomRoomsTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Path.of("docs/schemas/plan.schema.json").toUri());

    private static final JsonSchema BLOWERS = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Path.of("docs/schemas/blowers.schema.json").toUri());

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    @Property(tries = 60)
    void everyPlanIsToldInWholeSentences(@ForAll("rooms") Room room, @ForAll DisplayUnits units) {
        Plan plan = new Planner(CATALOGUE).plan(room);
        Quantities quantities = new Quantities(units, "$");
        assertThat(new PlanText(plan, quantities).withWhys())
                .doesNotContainPattern("\\{\\w+}")
                .doesNotContain("NaN");
        assertThat(new FindingsReport(plan, quantities).text()).doesNotContainPattern("\\{\\w+}");
        assertThat(blowers(plan, quantities).text()).endsWith("\n").doesNotContain("NaN");
    }

    private static BlowersReport blowers(Plan plan, Quantities quantities) {
        return new BlowersReport(
                plan,
                new Planner(CATALOGUE).basis(plan.room()).map(basis -> BlowerBench.of(basis, plan.pumps())),
                quantities);
    }

    @Property(tries = 60)
    void everyBenchFitsItsSchema(@ForAll("rooms") Room room) throws IOException {
        String json = blowers(new Planner(CATALOGUE).plan(room), Quantities.in(DisplayUnits.METRIC))
                .json();
        assertThat(BLOWERS.validate(new ObjectMapper().readTree(json))).isEmpty();
    }

    @Property(tries = 60)
    void everyPlanFitsTheSchema(@ForAll("rooms") Room room) throws IOException {
        String json = PlanJson.text(new Planner(CATALOGUE).plan(room), Quantities.in(DisplayUnits.METRIC));
        assertThat(SCHEMA.validate(new ObjectMapper().readTree(json))).isEmpty();
    }
}
