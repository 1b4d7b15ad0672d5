package lungfish.plan;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.DropFlow;
import lungfish.reason.Finding;
import lungfish.reason.Why;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.room.OwnClasses;
import lungfish.room.Rack;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import lungfish.sizing.Fleet;
import lungfish.sizing.Setting;
import lungfish.sizing.Trial;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds of every room, whatever stands in it. */
class RoomLawsTest {
    private static final int TRIES = 30;

    /** physics.md §4: what an answer may leave of the laws. */
    private static final double MASS_IMBALANCE = 1e-9;

    private static final double RESIDUAL_PA = 1e-6;

    /** Two solved answers of one question differ by their residuals: far less than this share. */
    private static final double SOLVED_TWICE = 1e-6;

    private static final double ROUNDING = 1e-9;

    private static Plan plan(Room room) {
        return new Planner(DemoPlans.CATALOGUE).plan(room);
    }

    @Provide
    Arbitrary<Room> anyRooms() {
        return RandomRooms.any(DemoPlans.CATALOGUE);
    }

    @Provide
    Arbitrary<Room> rooms() {
        return PlannableRooms.bleeding(new Blower.Unsaid());
    }

    @Provide
    Arbitrary<Room> unbledRooms() {
        return PlannableRooms.bleeding(new Blower.Unbled());
    }

    @Property(tries = TRIES)
    void everySoundRoomHasAPlanWithoutABrokenFigure(@ForAll("anyRooms") Room room) {
        Plan plan = plan(room);

        assertThat(figures(plan)).allSatisfy(figure -> assertThat(figure).isFinite());
        plan.solution().ifPresent(RoomLawsTest::meetsTheLaws);
    }

    private static List<Double> figures(Plan plan) {
        List<Double> all = new ArrayList<>();
        plan.duty().map(Duty::candidate).ifPresent(candidate -> {
            all.add(candidate.reserveShare());
            all.addAll(List.of(candidate.tired().gaugePa(), candidate.tired().watts()));
            all.addAll(List.of(
                    candidate.tired().discharge().coolK(),
                    candidate.tired().discharge().hotK()));
        });
        plan.headroom().ifPresent(headroom -> all.addAll(List.of(headroom.freeM3PerS(), headroom.freshFreeM3PerS())));
        plan.findings().stream().map(Finding::amounts).flatMap(List::stream).forEach(amount -> all.add(amount.si()));
        plan.whys().forEach(why -> {
            all.add(why.totalSi());
            why.terms().forEach(term -> all.add(term.si()));
            why.inputs().forEach(input -> all.add(input.si()));
        });
        return all;
    }

    private static void meetsTheLaws(Solution solution) {
        assertThat(solution.massImbalance()).isLessThan(MASS_IMBALANCE);
        assertThat(solution.residualPa()).isLessThan(RESIDUAL_PA);
    }

    @Property(tries = TRIES)
    void everyPlanMeetsTheLawsAndItsWhysAddUp(@ForAll("rooms") Room room) {
        Plan plan = plan(room);

        meetsTheLaws(plan.solution().orElseThrow());
        assertThat(plan.whys()).isNotEmpty().allSatisfy(RoomLawsTest::addsUp);
    }

    private static void addsUp(Why why) {
        assertThat(why.sumSi())
                .as(why.figure())
                .isEqualTo(why.totalSi(), within(ROUNDING * Math.max(1, Math.abs(why.totalSi()))));
    }

    @Property(tries = TRIES)
    void aMachineWithMoreAirAtEachPressureNeverLeavesLess(
            @ForAll("rooms") Room room, @ForAll @DoubleRange(min = 1.01, max = 2) double more) {
        Plan less = plan(withOwn(room, 1));
        Plan greater = plan(withOwn(room, more));

        assertThat(reserve(greater)).isGreaterThanOrEqualTo(reserve(less));
        assertThat(greater.headroom().orElseThrow().freeM3PerS())
                .isGreaterThanOrEqualTo(less.headroom().orElseThrow().freeM3PerS());
        assertThat(greater.headroom().orElseThrow().outlets())
                .isGreaterThanOrEqualTo(less.headroom().orElseThrow().outlets());
    }

    private static double reserve(Plan plan) {
        return plan.duty().orElseThrow().candidate().reserveShare();
    }

    /** The room with a machine of its own in every place: a linear piston whose flows are so many times as large. */
    private static Room withOwn(Room room, double times) {
        BlowerClass base = DemoPlans.CATALOGUE.blower("linear-piston-80").orElseThrow();
        List<BlowerClass.CurvePoint> points = base.points().stream()
                .map(point -> new BlowerClass.CurvePoint(point.gaugePa(), times * point.freeM3PerS(), point.watts()))
                .toList();
        List<Blower> blowers = room.blowers().stream()
                .map(blower -> blower.withMachine(Optional.of("own")))
                .toList();
        return Changed.own(room, new OwnClasses(List.of(), List.of(own(base, points))))
                .withBlowers(blowers);
    }

    private static BlowerClass own(BlowerClass base, List<BlowerClass.CurvePoint> points) {
        return new BlowerClass(
                "own",
                "own machine",
                base.kind(),
                base.ratedM3PerS(),
                base.ratedPa(),
                points,
                base.continuousPa(),
                base.level(),
                base.portM(),
                base.priceLow(),
                base.priceHigh(),
                base.rebuildPrice(),
                base.rebuildS(),
                base.lifeS(),
                base.tiredShare(),
                base.leastShare(),
                base.efficiency(),
                base.surgeFactor(),
                base.voltageV(),
                base.frequencyHz(),
                base.source());
    }

    @Property(tries = TRIES)
    void shuttingAValveOfABledRoomTakesAirFromNoOther(@ForAll("rooms") Room room, @ForAll int which) {
        shuttingTakesFromNoOther(room, which);
    }

    @Property(tries = TRIES)
    void shuttingAValveOfAnUnbledRoomTakesAirFromNoOther(@ForAll("unbledRooms") Room room, @ForAll int which) {
        shuttingTakesFromNoOther(room, which);
    }

    private static void shuttingTakesFromNoOther(Room room, int which) {
        OutletId shut = oneOf(room, which);
        Map<OutletId, Double> before = asSet(plan(room));
        Map<OutletId, Double> after = asSet(plan(Changed.outlet(room, shut, Changed::shut)));

        assertThat(after.get(shut)).isZero();
        before.forEach((id, flow) ->
                assertThat(id.equals(shut) ? flow : after.get(id)).isGreaterThanOrEqualTo(flow * (1 - SOLVED_TWICE)));
    }

    private static OutletId oneOf(Room room, int which) {
        return room.seats()
                .get(Math.floorMod(which, room.seats().size()))
                .outlet()
                .id();
    }

    private static Map<OutletId, Double> asSet(Plan plan) {
        return plan.outlets().stream().collect(toMap(outlet -> outlet.need().id(), outlet -> outlet.asSet()
                .map(DropFlow::freeM3PerS)
                .orElseThrow()));
    }

    @Property(tries = TRIES)
    void aDeeperAirReleaseNeverNeedsLessPressure(@ForAll("rooms") Room room, @ForAll int which) {
        double before = plan(room).duty().orElseThrow().needed().pressurePa();
        Room deeper = Changed.outlet(
                room,
                oneOf(room, which),
                outlet -> Changed.deep(outlet, outlet.depthM().orElseThrow() + 0.01));

        assertThat(plan(deeper).duty().orElseThrow().needed().pressurePa())
                .isGreaterThanOrEqualTo(before - RESIDUAL_PA);
    }

    @Property(tries = TRIES)
    void oneMoreOutletNeedsItsOwnAirAndNoLessPressure(@ForAll("rooms") Room room, @ForAll int which) {
        OutletId like = oneOf(room, which);
        Plan before = plan(room);
        Plan after = plan(Changed.outlets(
                room, outlet -> outlet.id().equals(like) ? List.of(outlet, Changed.twin(outlet)) : List.of(outlet)));
        double target = before.demand().needs().stream()
                .filter(need -> need.id().equals(like))
                .mapToDouble(need -> need.targetM3PerS().si())
                .sum();

        assertThat(after.demand().totalM3PerS())
                .isCloseTo(before.demand().totalM3PerS() + target, withinPercentage(100 * ROUNDING));
        assertThat(after.duty().orElseThrow().needed().pressurePa())
                .isGreaterThanOrEqualTo(before.duty().orElseThrow().needed().pressurePa() - RESIDUAL_PA);
    }

    @Property(tries = TRIES)
    void withExactOpeningsEveryOutletGetsItsTarget(@ForAll("rooms") Room room) {
        Plan plan = plan(room);
        Duty duty = plan.duty().orElseThrow();
        double[] exact = plan.outlets().stream()
                .mapToDouble(outlet -> outlet.setting().map(Setting::valveK).orElseThrow())
                .toArray();
        Fleet fleet = duty.candidate().fleet();
        AsSet solved = new Trial(
                        plan.piped().orElseThrow(),
                        fleet,
                        duty.needed().tuned(),
                        duty.candidate().tired())
                .asSet(Wear.TIRED, Upkeep.DUE, exact)
                .match(set -> set, tuned -> null, refused -> null);

        if (duty.candidate().serves()) {
            for (int i = 0; i < exact.length; i++) {
                assertThat(solved.drop(i).freeM3PerS())
                        .isCloseTo(
                                plan.outlets().get(i).need().targetM3PerS().si(), withinPercentage(100 * SOLVED_TWICE));
            }
        }
    }

    @Property(tries = TRIES)
    void theOrderOfTheRacksChangesNothing(@ForAll("rooms") Room room) {
        List<Rack> turned = new ArrayList<>(room.racks());
        Collections.reverse(turned);
        Plan before = plan(room);
        Plan after = plan(Changed.racks(room, turned));

        assertThat(after.duty().orElseThrow().candidate().kind())
                .isEqualTo(before.duty().orElseThrow().candidate().kind());
        assertThat(after.duty().orElseThrow().needed().pressurePa())
                .isCloseTo(before.duty().orElseThrow().needed().pressurePa(), withinPercentage(100 * SOLVED_TWICE));
        Map<OutletId, Double> flows = asSet(after);
        asSet(before).forEach((id, flow) -> assertThat(flows.get(id)).isEqualTo(flow, within(SOLVED_TWICE * 1e-4)));
    }
}
