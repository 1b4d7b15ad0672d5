package lungfish.everyday;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.report.EverydayWords;
import lungfish.report.Names;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.OutletBuilder;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Facts about outlets that are shut while no other valve is touched. */
final class ShutTest {
    private static final double L_PER_MIN = 1 / 60_000.0;

    /** Two solves of one network. */
    private static final double SOLVED_TWICE = 1e-6;

    private static OutletBuilder outlet(String id) {
        return anOutlet(id).device("sponge-small").depthM(0.2).targetM3PerS(0.8 * L_PER_MIN);
    }

    /** Three outlets in two tanks on one rack, and one in a rack that is only planned. */
    private static Plan plan(BlowerBuilder blower) {
        Room room = aRoom().with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1").with(outlet("o1")).with(outlet("o2")),
                                aTank("t2").at(0.65).with(outlet("o3").sometimes())))
                .with(aRack("w").at(2, 0.5).planned().shelf(0.5, aTank("w1").with(outlet("p1"))))
                .with(aMain("main", true, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2), new Point(4, 3, 2.2)))
                .with(blower.at(0.3, 0.2, 2.2))
                .build();
        return new Planner(DemoPlans.CATALOGUE).plan(room);
    }

    private static BlowerBuilder unbled() {
        return aBlower("b").machine("linear-diaphragm-15").bleed(new Blower.Unbled());
    }

    private static BlowerBuilder bled(String kind) {
        return aBlower("b").machine(kind).bleed(new Blower.BledTo(OptionalDouble.empty()));
    }

    private static Optional<Disturbed> closing(Plan plan, String... shut) {
        return Everyday.of(
                plan,
                plan.trials().orElseThrow().shouldBe(),
                Disturbance.Kind.SHUT,
                List.of(shut).stream().map(OutletId::new).collect(java.util.stream.Collectors.toSet()),
                DemoPlans.CATALOGUE);
    }

    private static String headline(Plan plan, Disturbed closing) {
        return new EverydayWords(closing, Quantities.in(DisplayUnits.METRIC), new Names(plan.room())).headline();
    }

    @Test
    void unbledTheOthersTakeWhatTheShutOneLeaves() {
        Plan plan = plan(unbled());
        Disturbed closing = closing(plan, "o1").orElseThrow();

        assertThat(closing.blowers().gaugeAfterPa())
                .isGreaterThan(closing.blowers().gaugeBeforePa());
        assertThat(closing.others()).hasSize(2);
        assertThat(closing.others().stream().mapToDouble(Moved::share).min().orElse(0))
                .isPositive();
        assertThat(closing.blowers().bledBeforeM3PerS()).isZero();
    }

    /** The machine gives some 300 L/min where 2.4 are asked: what one outlet leaves is a third of a hundredth. */
    @Test
    void behindAWideBleedNobodyNotices() {
        Plan plan = plan(bled("side-channel-250"));
        Disturbed closing = closing(plan, "o1").orElseThrow();

        assertThat(closing.isRetuned()).isFalse();
        assertThat(headline(plan, closing)).isEqualTo("No need to retune");
        assertThat(closing.blowers().bledAfterM3PerS())
                .isGreaterThan(closing.blowers().bledBeforeM3PerS());
    }

    /** Held, a blower gives what it gave: the bleed takes over what the shut outlet had, but for what the pipe loses less. */
    @Test
    void theBleedTakesOverWhatTheShutOutletHad() {
        Plan plan = plan(unbled());
        Disturbed closing = closing(plan, "o1").orElseThrow();
        double had = plan.outlets().get(0).predictedM3PerS().orElseThrow();

        assertThat(closing.bleed().orElseThrow().moreM3PerS()).isCloseTo(had, within(0.01 * had));
        assertThat(closing.bleed().orElseThrow().restShare()).isLessThan(0.01);
    }

    /** Its curve ends above the 12.5 kPa that it bears all day (the class), and with all shut it stands at the end of it. */
    @Test
    void anUnbledBlowerThatIsShutInIsHeldTooHigh() {
        Plan plan = plan(unbled());
        Disturbed closing = closing(plan, "o1", "o2", "o3").orElseThrow();
        double endPa = plan.duty().orElseThrow().candidate().fleet().shutPa(Wear.TIRED);

        assertThat(closing.others()).isEmpty();
        assertThat(closing.blowers().gaugeAfterPa()).isCloseTo(endPa, within(SOLVED_TWICE * endPa));
        assertThat(closing.blowers().tired().continuousPa()).isEqualTo(12_500);
        assertThat(closing.blowers().tired().isTooHigh()).isTrue();
        assertThat(headline(plan, closing)).isEqualTo("Open the bleed first");
    }

    @Test
    void newTheBlowerIsSetToTheSameGaugeBeforeAnythingIsShut() {
        Disturbed closing = closing(plan(bled("linear-diaphragm-60")), "o1").orElseThrow();

        assertThat(closing.blowers().fresh().beforePa())
                .isCloseTo(
                        closing.blowers().gaugeBeforePa(),
                        within(SOLVED_TWICE * closing.blowers().gaugeBeforePa()));
    }

    @Test
    void theMostChangedComesFirstAndTheShutOnesAreNotAmongThem() {
        Plan plan = DemoPlans.plan("garage-killifish");
        Disturbed closing = Everyday.of(
                        plan,
                        plan.trials().orElseThrow().is(),
                        Disturbance.Kind.SHUT,
                        Named.outlets(plan.room(), "C").orElseThrow(),
                        DemoPlans.CATALOGUE)
                .orElseThrow();

        assertThat(headline(plan, closing)).isEqualTo("Retune");
        assertThat(closing.hit())
                .hasSize(8)
                .extracting(moved -> moved.need().seat().rack().id().text())
                .containsOnly("C");
        assertThat(closing.others()).hasSize(22);
        assertThat(closing.others().stream()
                        .map(moved -> Math.abs(moved.share()))
                        .toList())
                .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    }

    @Test
    void outletsThatAreNotInPlaceShutNothing() {
        assertThat(closing(plan(unbled()), "p1")).isEmpty();
    }

    @Test
    void aWordNamesAnOutletATankAShelfARackOrThoseThatRunSometimes() {
        Plan plan = plan(unbled());
        Room room = plan.room();
        String shelf = room.racks().get(0).shelves().get(0).id().text();

        assertThat(Named.outlets(room, "o2")).contains(Set.of(new OutletId("o2")));
        assertThat(Named.outlets(room, "t1")).contains(Set.of(new OutletId("o1"), new OutletId("o2")));
        assertThat(Named.outlets(room, "sometimes")).contains(Set.of(new OutletId("o3")));
        Set<OutletId> all =
                Set.copyOf(plan.demand().needs().stream().map(Need::id).toList());
        assertThat(Named.outlets(room, shelf)).contains(all);
        assertThat(Named.outlets(room, "r")).contains(all);
        assertThat(Named.outlets(room, "w")).isEmpty();
        assertThat(Named.outlets(room, "nobody")).isEmpty();
    }
}
