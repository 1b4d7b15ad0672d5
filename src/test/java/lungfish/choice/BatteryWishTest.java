package lungfish.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Basis;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.Room;
import lungfish.room.Wishes;
import lungfish.room.Wishes.Wish;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;

/**
 * The time on battery is a wish like the others. In the room of {@link BlowerBenchTest} a machine of 100 L/min stands at
 * 15 kPa tired and draws 40 + 20 · 15/20 = 55 W; one of 200 L/min stands at 17.5 kPa and draws 57.5 W. The battery gives
 * 12.8 V · 50 Ah · 3600 · 0.8 = 1.8432 MJ; with an inverter of 0.9 that idles at 5 W the one draws 66.11 W of it, 27 880 s
 * long, and the other 68.89 W, 26 756 s long.
 */
final class BatteryWishTest {
    private static final double WISHED_S = 7.5 * 3600;
    private static final double A_SECOND = 1;

    private static final BlowerClass FRUGAL = BlowerBenchTest.own("frugal", 100, 40, 150, 10);
    private static final BlowerClass HUNGRY = BlowerBenchTest.own("hungry", 200, 40, 50, 10);

    private static Backup battery() {
        Backup.Battery battery = new Backup.Battery(
                new BatteryId("battery"),
                "lifepo4",
                1,
                12.8,
                50 * 3600,
                OptionalDouble.of(298.15),
                OptionalDouble.of(1),
                Optional.empty());
        Backup.Inverter inverter = new Backup.Inverter(
                OptionalDouble.of(0.9),
                OptionalDouble.of(5),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        return new Backup(
                List.of(battery), Optional.of(inverter), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static BlowerBench bench(Backup backup, OptionalDouble wishedS) {
        Room room = BlowerBenchTest.room(List.of(Wish.CHEAPEST), OptionalDouble.empty(), FRUGAL, HUNGRY);
        return BlowerBenchTest.bench(
                room.withBackup(backup).withWishes(room.wishes().withRuntimeS(wishedS)));
    }

    @Test
    void whoeverEmptiesTheBatteryTooSoonServesButDoesNotFit() {
        Candidate hungry = bench(battery(), OptionalDouble.of(WISHED_S))
                .row("hungry")
                .orElseThrow()
                .candidate();

        assertThat(hungry.serves()).isTrue();
        assertThat(hungry.broken()).singleElement().satisfies(broken -> {
            assertThat(broken.limit()).isEqualTo(Limit.RUNTIME);
            assertThat(broken.foundSi()).isCloseTo(26_756, within(A_SECOND));
            assertThat(broken.allowedSi()).isEqualTo(WISHED_S);
        });
    }

    @Test
    void theCheapestThatKeepsEveryWishStandsBeforeOneThatIsCheaper() {
        assertThat(BlowerBenchTest.reasons(bench(battery(), OptionalDouble.of(WISHED_S))))
                .containsExactly(
                        "frugal: the only one that keeps every wish",
                        "hungry: the cheapest to buy, but runs 7 h 25 min on battery, not 7 h 30 min");
    }

    @Test
    void whereNoTimeIsWishedOrNoBatteryIsThereNothingIsMissed() {
        assertThat(bench(battery(), OptionalDouble.empty()).rows().get(0).id()).isEqualTo("hungry");
        assertThat(bench(Backup.NONE, OptionalDouble.of(WISHED_S)).rows().get(0).id())
                .isEqualTo("hungry");
    }

    /** The cheaper one, of 430 USD, would empty the battery before the 6 hours are over; this one is 500 USD. */
    @Test
    void whatIsRecommendedAsTheCheapestMissesNoWishThatAnotherMeets() {
        Room demo = DemoPlans.room("basement-rainbows");
        Wishes wishes = demo.wishes().withLoudestDba(OptionalDouble.of(52)).withOrder(List.of(Wish.CHEAPEST));
        Basis basis = new Planner(CatalogueFiles.load())
                .basis(demo.withWishes(wishes))
                .orElseThrow();
        List<Candidate> ranked = basis.ranked();

        assertThat(ranked.get(0).kind().id()).isEqualTo("linear-piston-120-120v");
        assertThat(basis.missed(ranked.get(0))).isEmpty();
        assertThat(ranked)
                .filteredOn(each -> each.kind().id().equals("linear-diaphragm-150-120v"))
                .singleElement()
                .satisfies(each -> assertThat(each.broken())
                        .extracting(Limit.Broken::limit)
                        .containsExactly(Limit.RUNTIME));
    }
}
