package lungfish.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Why;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Facts about the explanations of an outlet's figures. */
final class OutletWhysTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    /** Rounding of sums of some thousand pascals. */
    private static final double ROUNDING_PA = 1e-6;

    static Stream<String> demos() {
        return DemoRooms.NAMES.stream();
    }

    private static Plan plan(String demo) {
        return new Planner(CATALOGUE)
                .plan(new RoomReader(CATALOGUE).read(DemoRooms.bytes(demo)).orThrow());
    }

    private static List<Why> whys(Plan plan, OutletPlan outlet, OutletWhys.Trial trial) {
        return OutletWhys.of(plan, outlet.need().id(), trial);
    }

    private static double total(List<Why> whys, String begins) {
        return whys.stream()
                .filter(why -> why.figure().startsWith(begins))
                .findFirst()
                .orElseThrow()
                .totalSi();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theTermsOfEveryFigureAddUpToIt(String demo) {
        Plan plan = plan(demo);
        for (OutletPlan outlet : plan.outlets()) {
            for (OutletWhys.Trial trial : OutletWhys.Trial.values()) {
                assertThat(whys(plan, outlet, trial)).hasSizeGreaterThan(4).allSatisfy(why -> assertThat(why.sumSi())
                        .as(why.figure())
                        .isEqualTo(why.totalSi(), within(ROUNDING_PA)));
            }
        }
    }

    /** The figure that is explained is the one that the table shows. */
    @ParameterizedTest
    @MethodSource("demos")
    void theFiguresAreThoseOfThePlan(String demo) {
        Plan plan = plan(demo);
        for (OutletPlan outlet : plan.outlets()) {
            List<Why> should = whys(plan, outlet, OutletWhys.Trial.AS_IT_SHOULD_BE_SET);
            List<Why> is = whys(plan, outlet, OutletWhys.Trial.AS_IT_IS_SET);
            assertThat(total(should, "spare"))
                    .isEqualTo(outlet.setting().orElseThrow().sparePa(), within(ROUNDING_PA));
            assertThat(total(is, "spare")).isEqualTo(outlet.asSetSparePa().orElseThrow(), within(ROUNDING_PA));
            assertThat(total(is, "air that"))
                    .isEqualTo(outlet.asSet().orElseThrow().freeM3PerS());
        }
    }
}
