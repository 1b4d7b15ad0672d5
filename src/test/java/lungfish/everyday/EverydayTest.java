package lungfish.everyday;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.blower.LowMains;
import lungfish.blower.Wear;
import lungfish.everyday.Disturbance.Kind;
import lungfish.network.DropFlow;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.reason.Code;
import lungfish.room.Blower;
import lungfish.room.OutletBuilder;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.sizing.Fleet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Facts about everyday disturbances in rooms. */
final class EverydayTest {
    private static final double L_PER_MIN = 1 / 60_000.0;

    /** Two solves of one network. */
    private static final double SOLVED_TWICE = 1e-6;

    /** ρ g of the fresh water of these rooms, within what a tank's own temperature changes of it. */
    private static final double WATER_PA_PER_M = 998.2 * 9.80665;

    private static final double TEMPERATURE_PERCENT = 0.005;

    private static OutletBuilder outlet(String id) {
        return anOutlet(id).device("sponge-small").depthM(0.25).targetM3PerS(0.8 * L_PER_MIN);
    }

    /** Two outlets in one tank of 0.3 m of water, and one with a most; nothing is bled. */
    private static Plan plan() {
        return plan(1);
    }

    private static Plan plan(double mostM3PerS) {
        Room room = aRoom().with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1").waterDepthM(0.3).with(outlet("o1")).with(outlet("o2")),
                                aTank("t2")
                                        .at(0.65)
                                        .waterDepthM(0.3)
                                        .with(outlet("o3").mostM3PerS(mostM3PerS))))
                .with(aMain("main", true, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2), new Point(4, 3, 2.2)))
                .with(aBlower("b")
                        .machine("linear-diaphragm-15")
                        .bleed(new Blower.Unbled())
                        .at(0.3, 0.2, 2.2))
                .build();
        return new Planner(DemoPlans.CATALOGUE).plan(room);
    }

    private static Disturbed asked(Plan plan, Kind kind, String... meant) {
        Set<OutletId> ids = Arrays.stream(meant)
                .flatMap(word -> Named.outlets(plan.room(), word).orElseThrow().stream())
                .collect(Collectors.toSet());
        return Everyday.of(plan, plan.trials().orElseThrow().shouldBe(), kind, ids, DemoPlans.CATALOGUE)
                .orElseThrow();
    }

    private static double[] flows(List<Moved> those, boolean isAfter) {
        return those.stream()
                .map(moved -> isAfter ? moved.after() : moved.before())
                .mapToDouble(DropFlow::freeM3PerS)
                .sorted()
                .toArray();
    }

    /** 0.25 m deep in 0.3 m of water, half of it gone: 0.10 m deep, so 0.15 m of water less to push away, ρ g · 0.15 m. */
    @Test
    void halfTheWaterOutEveryAirReleaseThereOpensThatMuchEarlier() {
        Disturbed half = asked(plan(), Kind.HALF_DRAIN, "o1");

        assertThat(half.hit()).hasSize(2).allSatisfy(moved -> assertThat(
                        moved.before().opensAtGaugePa() - moved.after().opensAtGaugePa())
                .isCloseTo(0.15 * WATER_PA_PER_M, within(TEMPERATURE_PERCENT * 0.15 * WATER_PA_PER_M)));
        assertThat(half.others()).hasSize(1).allMatch(moved -> moved.share() < 0);
        assertThat(half.hit()).allMatch(moved -> moved.share() > 0);
        assertThat(half.bared()).isZero();
    }

    @Test
    void whatTheOutletsAndTheBleedTakeIsWhatTheBlowerGives() {
        for (Kind kind : Kind.values()) {
            Plan plan = DemoPlans.plan("garage-killifish");
            Disturbed answer = asked(plan, kind);
            Fleet fleet = plan.duty().orElseThrow().candidate().fleet();
            Fleet after = new Change(answer.what(), plan.piped().orElseThrow()).fleet(fleet);
            double gives = after.freeAt(answer.blowers().gaugeAfterPa(), Wear.TIRED);

            assertThat(Arrays.stream(flows(answer.all().toList(), true)).sum()
                            + answer.blowers().bledAfterM3PerS())
                    .as(kind.name())
                    .isCloseTo(gives, within(SOLVED_TWICE * gives));
        }
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void halfADrainedRackNeverGetsLessAndTheOthersNeverMore(String name) {
        Plan plan = DemoPlans.plan(name);

        plan.room().racks().stream().filter(rack -> !rack.isPlanned()).forEach(rack -> {
            Disturbed half = asked(plan, Kind.HALF_DRAIN, rack.id().text());
            assertThat(half.hit()).allMatch(moved -> moved.share() >= -SOLVED_TWICE);
            assertThat(half.others()).allMatch(moved -> moved.share() <= SOLVED_TWICE);
            half.order().ifPresent(order -> {
                assertThat(order.turns()).allMatch(turn -> turn.to() < turn.from());
                assertThat(order.restShare()).isLessThan(Disturbed.most(half.hit()));
            });
        });
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void whatIsCleanedGoesTheWayBackThatWhatIsDueCame(String name) {
        Plan plan = DemoPlans.plan(name);

        Disturbed cleaned = asked(plan, Kind.CLEANED);
        Disturbed due = asked(plan, Kind.DUE);

        assertThat(flows(cleaned.hit(), true)).containsExactly(flows(due.hit(), false), within(1e-9));
        assertThat(flows(cleaned.hit(), false)).containsExactly(flows(due.hit(), true), within(1e-9));
    }

    @Test
    void theHatcheryComesOnAsItWentOff() {
        Plan plan = DemoPlans.plan("basement-rainbows");

        Disturbed on = asked(plan, Kind.HATCHERY_ON);
        Disturbed off = asked(plan, Kind.HATCHERY_OFF);

        assertThat(on.hit()).allMatch(moved -> moved.before().freeM3PerS() == 0);
        assertThat(flows(on.others(), true)).containsExactly(flows(off.others(), false), within(1e-9));
        assertThat(flows(on.others(), false)).containsExactly(flows(off.others(), true), within(1e-9));
    }

    /** Nothing is bled, so what o1 and o2 leave can only go to o3, which bears a thousandth more than it had. */
    @Test
    void whoGetsMoreThanItBearsIsAFinding() {
        double had =
                asked(plan(), Kind.SHUT, "o1", "o2").others().get(0).before().freeM3PerS();
        Plan plan = plan(1.001 * had);
        Disturbed shut = asked(plan, Kind.SHUT, "o1", "o2");

        assertThat(shut.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(Code.ABOVE_MOST_MEANWHILE);
            assertThat(finding.where()).isEqualTo(new OutletId("o3").part());
            assertThat(finding.amounts().get(0).si()).isGreaterThan(1.001 * had);
            assertThat(finding.amounts().get(1).si()).isEqualTo(1.001 * had);
        });
        assertThat(asked(plan, Kind.HALF_DRAIN, "t1").findings()).isEmpty();
    }

    @Test
    void anAirlineThatIsOffIsShutAndThenTheBleedTakesOverWhatItHad() {
        Plan plan = DemoPlans.plan("garage-killifish");
        Disturbed off = asked(plan, Kind.AIRLINE_OFF, "C");

        assertThat(off.hit()).hasSize(1);
        assertThat(off.others()).allMatch(moved -> moved.share() < 0);
        assertThat(off.hit().get(0).share()).isPositive();
        assertThat(off.order().orElseThrow().turns()).singleElement().satisfies(turn -> assertThat(turn.to())
                .isZero());
        double had = off.hit().get(0).before().freeM3PerS();
        assertThat(off.bleed().orElseThrow().moreM3PerS()).isCloseTo(had, within(0.01 * had));
    }

    /** The bleed can give what the machine gives less, at the pressure that the gauge showed: then nobody notices. */
    @Test
    void onLowMainsTheBleedIsClosedByWhatTheMachineGivesLess() {
        Plan plan = DemoPlans.plan("garage-killifish");
        Disturbed low = asked(plan, Kind.MAINS_LOW);
        Fleet fleet = plan.duty().orElseThrow().candidate().fleet();
        double gaugePa = low.blowers().gaugeBeforePa();
        double less =
                fleet.freeAt(gaugePa, Wear.TIRED) - fleet.with(LowMains::of).freeAt(gaugePa, Wear.TIRED);

        assertThat(low.bleed().orElseThrow().holds()).isTrue();
        assertThat(low.bleed().orElseThrow().moreM3PerS()).isCloseTo(-less, within(1e-3 * less));
        assertThat(low.bleed().orElseThrow().restShare()).isLessThan(SOLVED_TWICE);
    }

    /** Nothing is bled; the valves burn much of the pressure, and opened up they leave everybody what it had. */
    @Test
    void withoutABleedTheValvesAreOpenedOnLowMains() {
        Disturbed low = asked(plan(), Kind.MAINS_LOW);

        assertThat(low.bleed()).isEmpty();
        assertThat(low.order().orElseThrow().share()).isEqualTo(1);
        assertThat(low.order().orElseThrow().turns()).hasSize(3).allMatch(turn -> turn.to() > turn.from());
        assertThat(low.order().orElseThrow().restShare()).isLessThan(Disturbed.most(low.others()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whoIsNotHitIsAmongTheOthers(Kind kind) {
        Plan plan = DemoPlans.plan("garage-killifish");
        Disturbed answer = asked(plan, kind, "A");

        assertThat(answer.all().map(moved -> moved.need().id()).collect(Collectors.toSet()))
                .hasSize(plan.outlets().size());
        assertThat(answer.what().outlets()).hasSize(answer.hit().size());
    }

    @Test
    void whatIsMissingForAnAnswerIsSaid() {
        Plan plan = plan();

        assertThat(Lack.of(plan, Kind.FILTER_CLOGGED, Set.of())).contains(Lack.NO_FILTER);
        assertThat(Lack.of(plan, Kind.HATCHERY_ON, Set.of())).contains(Lack.NO_HATCHERY);
        assertThat(Lack.of(plan, Kind.SHUT, Set.of(new OutletId("nobody")))).contains(Lack.NOBODY);
        assertThat(Lack.of(plan, Kind.MAINS_LOW, Set.of())).isEmpty();
    }
}
