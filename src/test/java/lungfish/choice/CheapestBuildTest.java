package lungfish.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.room.Wishes;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search finds what looking at every build finds; and what it says of wishes is so. */
final class CheapestBuildTest {
    private static final int ROOMS = 200;
    /** Sums of the same prices in another order. */
    private static final double ROUNDING = 1e-6;

    private static final Planner PLANNER = new Planner(DemoPlans.CATALOGUE);

    static Stream<String> demos() {
        return DemoPlans.names();
    }

    private static CheapestBuild search(Room room, Planner planner) {
        PipeStudy study = PipeStudy.of(room, planner, Progress.UNHEARD).orElseThrow();
        return CheapestBuild.of(study, Progress.UNHEARD);
    }

    private static CheapestBuild search(String demo) {
        return search(DemoPlans.room(demo), PLANNER);
    }

    @Test
    void theSearchFindsWhatEnumerationFindsIn200Rooms() {
        Planner planner = new Planner(SmallRooms.CATALOGUE);
        Map<Limit, Integer> told = new EnumMap<>(Limit.class);
        int[] none = {0};
        int[] dearer = {0};
        SmallRooms.rooms(ROOMS).forEach(room -> {
            CheapestBuild found = search(room, planner);
            Enumeration slow = new Enumeration(room, SmallRooms.CATALOGUE);
            assertSame(found.best(), slow.cheapest(Optional.empty()));
            assertSame(found.lasting(), slow.lasting().stream().toList());
            dearer[0] += isDearerToBuy(found) ? 1 : 0;
            for (WishPrice price : found.prices()) {
                List<Enumeration.Built> without = slow.cheapest(Optional.of(price.limit()));
                assertSame(price.build(), without);
                if (!without.equals(slow.cheapest(Optional.empty()))) {
                    told.merge(price.limit(), 1, Integer::sum);
                }
            }
            none[0] += found.best().isEmpty() ? 1 : 0;
        });
        // the rooms try what they are meant to try: each wish, and each limit that a class can be chosen by, decides in
        // some
        assertThat(told).containsKeys(Limit.RESERVE, Limit.SPARE, Limit.NOISE, Limit.RUNTIME, Limit.MAINS, Limit.SPEED);
        assertThat(none[0]).isBetween(1, ROOMS / 2);
        // and in some what lasts is not what is cheapest to buy
        assertThat(dearer[0]).isPositive();
    }

    private static boolean isDearerToBuy(CheapestBuild found) {
        return found.lasting().isPresent()
                && found.lasting().get().purchase() > found.best().orElseThrow().purchase() + ROUNDING;
    }

    private static void assertSame(Optional<Build> found, List<Enumeration.Built> cheapest) {
        assertThat(found.isPresent()).isEqualTo(!cheapest.isEmpty());
        found.ifPresent(build -> {
            assertThat(build.purchase()).isCloseTo(cheapest.get(0).purchase(), within(ROUNDING));
            assertThat(build.total()).isCloseTo(cheapest.get(0).total(), within(ROUNDING * build.total()));
        });
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noOtherBuildOfADemoRoomThatMeetsAllIsCheaper(String name) {
        CheapestBuild found = search(name);

        assertThat(found.best()).isPresent();
        assertThat(found.best().orElseThrow().missed()).isEmpty();
        assertThat(found.prices())
                .allSatisfy(price -> assertThat(price.costs().orElseThrow()).isNotNegative());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theCheapestBuildCanBeSavedAndReadAgain(String name) {
        Room built = search(name).best().orElseThrow().room();

        assertThat(new RoomReader(DemoPlans.CATALOGUE)
                        .read(RoomWriter.bytes(built))
                        .value())
                .contains(built);
    }

    @Test
    void whereNoBuildIsQuietEnoughTheQuietStandsInTheWay() {
        Room garage = DemoPlans.room("garage-killifish");
        Room silent = garage.withWishes(garage.wishes().withLoudestDba(OptionalDouble.of(5)));

        CheapestBuild found = search(silent, PLANNER);

        assertThat(found.best()).isEmpty();
        assertThat(found.inTheWay()).extracting(WishPrice::limit).containsExactly(Limit.NOISE);
        assertThat(found.nearest().orElseThrow().missed())
                .extracting(Limit.Broken::limit)
                .containsExactly(Limit.NOISE);
    }

    @Test
    void aWishThatAsksForALargerBlowerCostsTheDifference() {
        CheapestBuild found = search("garage-killifish");
        WishPrice reserve = price(found, Limit.RESERVE);

        // 40 L/min at (110 + 190) / 2 instead of 30 L/min at (90 + 160) / 2, in the same pipe
        assertThat(reserve.costs().orElseThrow()).isCloseTo(25, within(ROUNDING));
        assertThat(reserve.build().orElseThrow().candidate().kind().id()).isEqualTo("linear-diaphragm-30");
    }

    /** A member gave one side-channel blower, for nothing; the hall wants four. */
    @Test
    void aMachineAtHandIsBuiltInWhereOneIsWantedAndNotFourTimes() {
        Room hall = DemoPlans.room("club-hall");
        Room one = hall.withBlowers(
                List.of(hall.blowers(Blower.Role.PLANNED).get(0).times(1)));

        assertThat(PLANNER.basis(one).orElseThrow().buyable())
                .extracting(BlowerClass::id)
                .contains("club-spare");
        CheapestBuild found = search("club-hall");
        assertThat(found.drawn().candidate().fleet().machines()).isEqualTo(4);
        assertThat(found.prices())
                .flatExtracting(price -> price.build().stream().toList())
                .isNotEmpty()
                .extracting(build -> build.candidate().kind().id())
                .doesNotContain("club-spare");
    }

    private static WishPrice price(CheapestBuild found, Limit limit) {
        return found.prices().stream()
                .filter(each -> each.limit() == limit)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotWishedHasNoPriceAndWhatIsAssumedIsTold() {
        Room garage = DemoPlans.room("garage-killifish");

        CheapestBuild found = search(garage.withWishes(Wishes.NONE), PLANNER);

        assertThat(found.assumed()).containsExactlyInAnyOrder(Limit.RESERVE, Limit.SPARE);
        assertThat(found.prices()).extracting(WishPrice::limit).doesNotContain(Limit.NOISE, Limit.RUNTIME);
    }

    @Test
    void theCheapestBuildIsNoDearerThanTheRoomAsDrawn() {
        CheapestBuild found = search("basement-rainbows");

        assertThat(found.drawn().missed()).isEmpty();
        assertThat(found.best().orElseThrow().purchase())
                .isLessThan(found.drawn().purchase());
    }
}
