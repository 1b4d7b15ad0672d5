package lungfish.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.blower.Wear;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.PlannableRooms;
import lungfish.plan.Planner;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.sizing.Fleet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every first start. */
final class FirstStartLawsTest {
    private static final int TRIES = 40;

    /** A gauge found by halving, and the loss in a silencer at a flow read off a curve. */
    private static final double ROUNDING = 1 + 1e-6;

    /** Per cent: two solves of one network. */
    private static final double SOLVED_TWICE = 1e-4;

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void noStepOfADemoRoomHoldsABlowerAboveItsContinuousPressure(String room) {
        Plan plan = DemoPlans.plan(room);
        bearable(plan, FirstStart.of(plan, DemoPlans.CATALOGUE).orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everyOutletOfADemoRoomIsSetOnce(String room) {
        Plan plan = DemoPlans.plan(room);
        List<String> keys = FirstStart.of(plan, DemoPlans.CATALOGUE).orElseThrow().steps().stream()
                .map(FirstStep::key)
                .filter(key -> key.startsWith("valve:"))
                .toList();
        assertThat(keys)
                .containsExactlyInAnyOrderElementsOf(plan.outlets().stream()
                        .map(outlet -> "valve:" + outlet.need().id().text())
                        .toList());
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
    void noStepHoldsABlowerAboveItsContinuousPressure(@ForAll("rooms") Room room) {
        startedOrNot(room);
    }

    @Property(tries = TRIES)
    void norDoesOneInARoomWithoutABleed(@ForAll("unbledRooms") Room room) {
        startedOrNot(room);
    }

    private static void startedOrNot(Room room) {
        Plan plan = new Planner(DemoPlans.CATALOGUE).plan(room);
        Optional<FirstStart> start = FirstStart.of(plan, DemoPlans.CATALOGUE);
        assertThat(start.isPresent()).isEqualTo(Lack.of(plan).isEmpty());
        start.ifPresent(found -> {
            bearable(plan, found);
            everyOutletEndsAtItsTarget(plan, found);
        });
    }

    private static void bearable(Plan plan, FirstStart start) {
        Fleet fleet = plan.duty().orElseThrow().candidate().fleet();
        for (FirstStep step : start.steps()) {
            if (step.running() && step.reads().gauge().isPresent()) {
                double gaugePa = step.reads().gauge().get().si();
                assertThat(gaugePa).as(step.key()).isLessThanOrEqualTo(start.limitPa());
                bearable(step, step.kind() == FirstStep.Kind.STANDBY ? standby(plan, fleet, step) : fleet, gaugePa);
            }
        }
    }

    /** At a pressure that a bleed holds, each machine gives what its curve gives there, and no less: the bleed takes the rest. */
    private static void bearable(FirstStep step, Fleet fleet, double gaugePa) {
        for (int i = 0; i < fleet.placed().size(); i++) {
            Machine machine = fleet.placed().get(i).machine();
            double gives = fleet.freeAt(i, gaugePa, Wear.NEW);
            assertThat(machine.machinePa(gaugePa, gives))
                    .as(step.key())
                    .isLessThanOrEqualTo(machine.kind().continuousPa() * ROUNDING);
        }
        assertThat(fleet.freeAt(gaugePa, Wear.NEW) * ROUNDING)
                .as(step.key())
                .isGreaterThanOrEqualTo(fleet.leastM3PerS());
    }

    private static Fleet standby(Plan plan, Fleet fleet, FirstStep step) {
        PartId where = step.where().orElseThrow();
        Blower blower = plan.room().blowers().stream()
                .filter(each -> each.id().part().equals(where))
                .findFirst()
                .orElseThrow();
        Machine machine = Machines.chosen(blower, plan.room(), DemoPlans.CATALOGUE)
                .orElseGet(() -> Machines.as(fleet.kind(), blower, DemoPlans.CATALOGUE));
        return new Fleet(List.of(new Fleet.Placed(machine, "")), fleet.bleed(), fleet.room());
    }

    private static void everyOutletEndsAtItsTarget(Plan plan, FirstStart start) {
        HeldRoom.Stand last = new Tuning(
                        plan,
                        plan.piped().orElseThrow(),
                        plan.duty().orElseThrow().candidate().fleet(),
                        start.holdPa(),
                        DemoPlans.CATALOGUE)
                .last()
                .orElseThrow();
        assertThat(last.held()).isTrue();
        IntStream.range(0, plan.outlets().size()).forEach(i -> assertThat(
                        last.set().drop(i).freeM3PerS())
                .isCloseTo(
                        plan.piped().orElseThrow().needs().get(i).targetM3PerS().si(), withinPercentage(SOLVED_TWICE)));
    }
}
