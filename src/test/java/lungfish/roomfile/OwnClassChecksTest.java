package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

/** Classes as a keeper types them from a data sheet, in the file. */
final class OwnClassChecksTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    private static final String BLOWER =
            """
            {"id": "mine", "name": "Mine", "kind": "linear_piston", "rated_m3_per_s": 0.001, "rated_gauge_pa": 15000,
             "curve": [%s], "continuous_gauge_pa": 20000, "port_bore_m": 0.018, "price_low": 200, "price_high": 300,
             "rebuild_price": 60, "rebuild_s": 1e8, "life_s": 4e8, "tired_share": 0.8, "least_share": 0,
             "efficiency": 0.25, "surge_factor": 1.4, "source": "data sheet"}""";

    private static Iterable<Problem> problems(String blower) {
        String room = RoomWriter.text(Rooms.empty()).stripTrailing();
        String text = room.substring(0, room.length() - 1) + ", \"own_classes\": {\"blowers\": [" + blower + "]}}";
        return new RoomReader(CATALOGUE).read(text).problems();
    }

    private static String point(int gaugePa, double free) {
        return "{\"gauge_pa\": " + gaugePa + ", \"free_m3_per_s\": " + free + ", \"power_w\": 30}";
    }

    @Test
    void aFallingCurveIsRead() {
        assertThat(problems(BLOWER.formatted(point(0, 0.0015) + "," + point(15000, 0.001))))
                .isEmpty();
    }

    @Test
    void aCurveThatRisesOrTurnsBackIsAProblemAtItsPoint() {
        assertThat(problems(BLOWER.formatted(point(0, 0.001) + "," + point(5000, 0.0015) + "," + point(4000, 0.0005))))
                .extracting(Problem::path)
                .containsExactly(
                        "/own_classes/blowers/0/curve/1/free_m3_per_s", "/own_classes/blowers/0/curve/2/gauge_pa");
    }

    @Test
    void aMachineDrawsPower() {
        String idle = "{\"gauge_pa\": 15000, \"free_m3_per_s\": 0.001, \"power_w\": 0}";
        assertThat(problems(BLOWER.formatted(point(0, 0.0015) + "," + idle)))
                .extracting(Problem::path)
                .containsExactly("/own_classes/blowers/0/curve/1/power_w");
    }

    @Test
    void onePointIsNoCurve() {
        assertThat(problems(BLOWER.formatted(point(0, 0.001))))
                .containsExactly(new Problem("/own_classes/blowers/0/curve", "a curve has 1 points", "two or more"));
    }

    @Test
    void theLowPriceIsNoHigherThanTheHighOne() {
        String dear = BLOWER.replace("\"price_low\": 200", "\"price_low\": 400");
        assertThat(problems(dear.formatted(point(0, 0.0015) + "," + point(15000, 0.001))))
                .containsExactly(new Problem(
                        "/own_classes/blowers/0/price_low", "400 is more than price_high (300)", "at most 300"));
    }
}
