package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import lungfish.sure.Band;
import lungfish.sure.Sampling;
import lungfish.sure.Sureness;
import lungfish.sure.Weight;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever may be drawn, how sure its plan is can be told. */
final class SurenessOfRandomRoomsTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final Planner PLANNER = new Planner(CATALOGUE);
    private static final int FEW = 20;
    private static final double ROUNDING = 1e-9;

    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Path.of("docs/schemas/sure.schema.json").toUri());

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    private static Optional<Sureness> sureness(Room room) {
        return Sampling.of(PLANNER, room, FEW, 1, Progress.UNHEARD);
    }

    @Property(tries = 40)
    void whoeverHasABasisHasAnAnswer(@ForAll("rooms") Room room) {
        assertThat(sureness(room).isPresent()).isEqualTo(PLANNER.basis(room).isPresent());
    }

    @Property(tries = 40)
    void everyBandIsInOrderAndTheWeightsAreOneWhole(@ForAll("rooms") Room room) {
        sureness(room).ifPresent(sure -> {
            Sureness.Bands bands = sure.bands();
            assertThat(Stream.of(
                            bands.headroom(),
                            bands.reserve(),
                            bands.needed(),
                            bands.running(),
                            bands.gives(),
                            bands.draws()))
                    .allMatch(SurenessOfRandomRoomsTest::isInOrder);
            double whole = sure.weights().stream().mapToDouble(Weight::share).sum();
            Band reserve = bands.reserve();
            if (sure.weights().isEmpty()) { // a blower that gives nothing, whatever is off
                assertThat(reserve.lowSi()).isEqualTo(reserve.highSi());
            } else {
                assertThat(whole).isCloseTo(1, within(ROUNDING));
            }
        });
    }

    private static boolean isInOrder(Band band) {
        return band.lowSi() <= band.medianSi() && band.medianSi() <= band.highSi();
    }

    @Property(tries = 40)
    void everyAnswerCanBeTold(@ForAll("rooms") Room room, @ForAll DisplayUnits units) throws IOException {
        Optional<Sureness> sure = sureness(room);
        Quantities quantities = new Quantities(units, "$");
        Plan plan = PLANNER.plan(room);
        String json = sure.map(found -> SureJson.text(plan, quantities, 1, found))
                .orElseGet(() -> SureJson.unsolved(plan, quantities, 1));

        assertThat(SCHEMA.validate(new ObjectMapper().readTree(json))).isEmpty();
        sure.ifPresent(found ->
                assertThat(new SureReport(room.name(), quantities).text(found)).doesNotContain("NaN", "Infinity"));
    }
}
