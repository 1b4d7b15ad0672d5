package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Progress;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Spread;
import lungfish.room.Spreads;
import lungfish.sizing.Candidate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class SamplingTest {
    private static final int FEW = 150;

    static List<String> demoRooms() {
        return DemoPlans.names().toList();
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void whereNothingIsOffEveryFigureIsThatOfThePlan(String name) {
        Room room = DemoPlans.room(name);
        Plan plan = DemoPlans.plan(name);
        Candidate chosen = plan.duty().orElseThrow().candidate();

        Sureness sure = Doubtful.sureness(room.withSpreads(Doubtful.exact()), 3);

        assertThat(sure.bands())
                .isEqualTo(new Sureness.Bands(
                        exactly(plan.headroom().orElseThrow().outlets()),
                        exactly(chosen.reserveShare()),
                        exactly(plan.duty().orElseThrow().needed().pressurePa()),
                        exactly(chosen.tired().gaugePa()),
                        exactly(chosen.tired().freeM3PerS()),
                        exactly(chosen.tired().watts())));
        assertThat(sure.candidates()).allSatisfy(each -> {
            assertThat(each.served()).isEqualTo(new Odds(each.planned().serves() ? 3 : 0, 3));
            assertThat(each.fits()).isEqualTo(new Odds(each.planned().fits() ? 3 : 0, 3));
        });
        assertThat(sure.weights()).isEmpty();
    }

    /** It draws so much that the battery of the room lasts 5.7 of the 6 hours that are wished. */
    @Test
    void withEveryWishMeansThatTheBatteryLastsToo() {
        Room room = DemoPlans.room("basement-rainbows").withSpreads(Doubtful.exact());

        assertThat(Doubtful.sureness(room, 3).candidates())
                .filteredOn(each -> each.planned().kind().id().equals("linear-piston-150-120v"))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.served().holds()).isEqualTo(3);
                    assertThat(each.fits().holds()).isZero();
                });
    }

    private static Band exactly(double si) {
        return new Band(si, si, si, si);
    }

    /** A machine gives (1 + r) of what is needed; of its air nine of ten give less than 1.06 times as much. */
    @Test
    void theReserveIsAsWideAsTheToleranceOfTheCurve() {
        Sureness sure = Doubtful.sureness(Doubtful.room(4, Doubtful.only(Spread.CURVE, 0.06)), 1000);
        double gives = 1 + sure.bands().reserve().plannedSi();

        assertThat(1 + sure.bands().reserve().highSi()).isCloseTo(1.06 * gives, withinPercentage(0.2));
        assertThat(1 + sure.bands().reserve().medianSi()).isCloseTo(gives, withinPercentage(0.2));
        assertThat(1 + sure.bands().reserve().lowSi()).isCloseTo(0.94 * gives, withinPercentage(0.2));
    }

    /** Tired, a share t of the air is left; nine of ten have lost less than 1.4 times 1 - t, as many more than a 1.4th. */
    @Test
    void theReserveIsAsWideAsTheWear() {
        Sureness sure = Doubtful.sureness(Doubtful.room(4, Doubtful.only(Spread.WEAR, 0.4)), 1000);
        double left = sure.chosen().kind().tiredShare();
        double gives = 1 + sure.bands().reserve().plannedSi();

        assertThat(1 + sure.bands().reserve().lowSi())
                .isCloseTo(gives * (1 - 1.4 * (1 - left)) / left, withinPercentage(0.5));
        assertThat(1 + sure.bands().reserve().highSi())
                .isCloseTo(gives * (1 - (1 - left) / 1.4) / left, withinPercentage(0.5));
    }

    /**
     * Both act on the air alone. The curve's factor is triangular with a half width h = 0.06 · 1.809 = 0.10854, its variance
     * h² / 6 = 0.0019635. Wear with 10 % off takes 1.0746 of 0.07437² of the squared loss over what is left.
     */
    @Test
    void whatTheDoubtComesFromIsToldInSharesOfTheVariance() {
        Spreads spreads = Doubtful.only(Spread.CURVE, 0.06).with(Spread.WEAR, OptionalDouble.of(0.1));

        Sureness sure = Doubtful.sureness(Doubtful.room(4, spreads), 1000);

        double tired = sure.chosen().kind().tiredShare();
        double sigma = Math.log(1.1) / Chance.Z90;
        double lognormal = Math.expm1(sigma * sigma) * Math.exp(sigma * sigma);
        double wear = lognormal * Math.pow((1 - tired) / tired, 2);
        double curve = 0.0019635;
        assertThat(sure.weights()).extracting(Weight::spread).containsExactly(Spread.CURVE, Spread.WEAR);
        assertThat(sure.weights().get(0).share()).isCloseTo(curve / (curve + wear), within(0.02));
        assertThat(sure.weights().get(1).share()).isCloseTo(wear / (curve + wear), within(0.02));
    }

    /** In so short a main the air flows smoothly, and roughness is nothing to it. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ROUGHNESS")
    void whatIsOffByMoreNeverNarrowsTheBand(Spread spread) {
        double narrow = spread == Spread.DEPTH ? 0.02 : 0.05;

        Band less = Doubtful.sureness(Doubtful.room(6, Doubtful.only(spread, narrow)), FEW)
                .bands()
                .reserve();
        Band more = Doubtful.sureness(Doubtful.room(6, Doubtful.only(spread, 3 * narrow)), FEW)
                .bands()
                .reserve();

        assertThat(more.highSi() - more.lowSi()).isGreaterThan(less.highSi() - less.lowSi());
        assertThat(less.highSi()).isGreaterThan(less.lowSi());
    }

    @Test
    void theAnswerIsTheSameHoweverManyThreadsWorkOnIt() {
        Ground ground =
                Ground.of(Doubtful.PLANNER, Doubtful.room(5, Spreads.UNKNOWN)).orElseThrow();

        Sureness alone = Sampling.of(ground, FEW, 9, 1);

        assertThat(Sampling.of(ground, FEW, 9, 2)).isEqualTo(alone);
        assertThat(Sampling.of(ground, FEW, 9, 5)).isEqualTo(alone);
    }

    @Test
    void theSameSeedGivesTheSameAnswerAndAnotherAnother() {
        Room room = Doubtful.room(5, Spreads.UNKNOWN);

        Sureness.Bands bands = Doubtful.sureness(room, FEW, 9).bands();

        assertThat(Doubtful.sureness(room, FEW, 9).bands()).isEqualTo(bands);
        assertThat(Doubtful.sureness(room, FEW, 10).bands()).isNotEqualTo(bands);
    }

    @Test
    void eachStepOfAGrowingRoomIsNoSurerToBeServedThanTheOneBefore() {
        Sureness sure = Doubtful.sureness(DemoPlans.room("basement-rainbows"), FEW);

        assertThat(sure.stages())
                .hasSize(3)
                .extracting(Sureness.StageOdds::outlets)
                .isSorted()
                .startsWith(70);
        assertThat(sure.stages())
                .extracting(stage -> stage.served().holds())
                .isSortedAccordingTo(java.util.Comparator.reverseOrder())
                .doesNotHaveDuplicates();
        assertThat(sure.stages().get(0).when().isNow()).isTrue();
    }

    @Test
    void progressGoesFromTheFirstStepToTheLast() {
        List<Integer> told = new ArrayList<>();
        List<Integer> of = new ArrayList<>();

        Sampling.of(Doubtful.PLANNER, Doubtful.room(2, Spreads.UNKNOWN), 60, 1, (done, all) -> {
            told.add(done);
            of.add(all);
        });

        assertThat(told).isSorted().startsWith(1).endsWith(of.get(0)).hasSize(of.get(0));
        assertThat(of).containsOnly(60 + 60 * Spread.values().length);
    }

    @Test
    void whoNoLongerWantsTheAnswerIsHeard() {
        assertThatThrownBy(
                        () -> Sampling.of(Doubtful.PLANNER, Doubtful.room(2, Spreads.UNKNOWN), 500, 1, (done, all) -> {
                            throw new CancellationException();
                        }))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void aRoomThatCannotBeSolvedHasNoAnswer() {
        assertThat(Sampling.of(Doubtful.PLANNER, Rooms.empty(), 10, 1, Progress.UNHEARD))
                .isEmpty();
    }
}
