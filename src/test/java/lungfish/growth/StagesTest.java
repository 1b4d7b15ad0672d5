package lungfish.growth;

import static lungfish.plan.DemoPlans.CATALOGUE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass;
import lungfish.edit.BlowerEdits;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Blower;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Step;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StagesTest {
    private static final double L_PER_MIN = 1e-3 / 60;

    /** Targets of the demo rooms are filed to four figures. */
    private static final double FILED = 0.01 * L_PER_MIN;

    private static final Planner PLANNER = new Planner(CATALOGUE);
    private static final Room BASEMENT = DemoPlans.room("basement-rainbows");
    private static final Room HALL = DemoPlans.room("club-hall");

    static Stages stages(Room room) {
        return Staging.of(PLANNER, room, Progress.UNHEARD).orElseThrow();
    }

    /** From the whole plan: what its candidate breaks, but for the reserve, and the battery. */
    static List<Limit> broken(Room room) {
        Plan plan = PLANNER.plan(room);
        double holds = plan.backup().orElseThrow().runtimeS().orElse(Double.MAX_VALUE);
        Stream<Limit> battery = Stream.of(Limit.RUNTIME)
                .filter(limit -> holds < room.wishes().runtimeS().orElse(0));
        return Stream.concat(
                        plan.duty().orElseThrow().candidate().broken().stream().map(Limit.Broken::limit), battery)
                .filter(limit -> limit != Limit.RESERVE)
                .toList();
    }

    static Room withBlower(Room room, String machine, Blower.Bleed bleed) {
        return room.withBlowers(room.blowers().stream()
                .map(blower -> blower.role() == Blower.Role.PLANNED
                        ? blower.withMachine(Optional.of(machine)).withBleed(bleed)
                        : blower)
                .toList());
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void nowIsTheRoomAsThePlanHasIt(String demo) {
        Plan plan = DemoPlans.plan(demo);

        Stage now = stages(plan.room()).all().get(0);

        assertThat(now.when().isNow()).isTrue();
        assertThat(now.outlets()).isEqualTo(plan.demand().needs().size());
        assertThat(now.needed().pressurePa())
                .isEqualTo(plan.duty().orElseThrow().needed().pressurePa());
        assertThat(now.standing().blower().kind())
                .isEqualTo(plan.duty().orElseThrow().candidate().kind());
        assertThat(now.standing().headroom().outlets())
                .isEqualTo(plan.headroom().orElseThrow().outlets());
    }

    /** Now 96.65 L/min; the grow-out wall adds 6 × 2.5, the blue-eye wall 12 × 1.5. */
    @Test
    void eachStepComesOnTopOfThoseBefore() {
        assertThat(stages(BASEMENT).all()).extracting(Stage::outlets).containsExactly(70, 70 + 6, 70 + 6 + 12);
        assertThat(stages(BASEMENT).all())
                .extracting(stage -> stage.needed().freeM3PerS())
                .satisfiesExactly(
                        now -> assertThat(now).isEqualTo(96.65 * L_PER_MIN, offset(FILED)),
                        first -> assertThat(first).isEqualTo(111.65 * L_PER_MIN, offset(FILED)),
                        second -> assertThat(second).isEqualTo(129.65 * L_PER_MIN, offset(FILED)));
    }

    @Test
    void aStepIsCalledWhatItsFirstRackSays() {
        assertThat(stages(HALL).all().get(2).when())
                .isEqualTo(new Stage.When(2, Optional.of("in two years"), List.of(new RackId("Z"), new RackId("Q"))));
    }

    /** The first wall leaves 122.9 / 111.65 - 1 = 10 % of the 25 % that are wished for: what the reserve is there for. */
    @Test
    void theReserveIsThereToBeGrownInto() {
        assertThat(stages(BASEMENT).all())
                .extracting(Stage::state)
                .containsExactly(Stage.State.FITS, Stage.State.TIGHT, Stage.State.BREAKS);
    }

    @Test
    void theFirstToBreakIsToldWithItsLimit() {
        Stage first = stages(BASEMENT).firstToBreak().orElseThrow();

        assertThat(first.when().number()).isEqualTo(2);
        assertThat(first.standing().breaks()).map(Limit.Broken::limit).contains(Limit.FLOW);
        assertThat(first.standing().breaks().orElseThrow().allowedSi()).isEqualTo(129.65 * L_PER_MIN, offset(FILED));
    }

    @ParameterizedTest
    @ValueSource(strings = {"basement-rainbows", "club-hall"})
    void theMendReallyMends(String demo) {
        Stage first = stages(DemoPlans.room(demo)).firstToBreak().orElseThrow();
        Repair repair = first.standing().repair().orElseThrow();

        assertThat(broken(first.room())).isNotEmpty();
        assertThat(repair.still()).isEmpty();
        assertThat(broken(repair.mend().orElseThrow().in(first.room()))).isEmpty();
    }

    /** Every class of the catalogue that would cost less is really put in its place, and the room planned. */
    @Test
    void noCheaperMachineWouldHaveDone() {
        Stage first = stages(HALL).firstToBreak().orElseThrow();
        double price =
                first.standing().repair().flatMap(Repair::mend).orElseThrow().price();

        assertThat(CATALOGUE.blowers())
                .filteredOn(kind -> !kind.kind().isPump() && 4 * kind.price() < price)
                .isNotEmpty()
                .allMatch(kind ->
                        !broken(BlowerEdits.choose(kind).of(first.room())).isEmpty());
    }

    @Test
    void oneMoreBesideItIsOneMore() {
        Stage first = stages(HALL).firstToBreak().orElseThrow();
        Mend mend = first.standing().repair().flatMap(Repair::mend).orElseThrow();

        assertThat(mend).isInstanceOf(Mend.Beside.class);
        assertThat(mend.in(first.room()).blowers(Blower.Role.PLANNED).stream()
                        .mapToInt(Blower::count)
                        .sum())
                .isEqualTo(5);
    }

    @Test
    void whatWasBoughtInTimeCarriesEveryStage() {
        Stages stages = stages(HALL);
        BlowerClass kind = stages.foresight().orElseThrow().kind();

        assertThat(stages.all())
                .allMatch(stage ->
                        broken(BlowerEdits.choose(kind).of(stage.room())).isEmpty());
        assertThat(CATALOGUE.blowers())
                .filteredOn(other -> !other.kind().isPump() && other.price() < kind.price())
                .allMatch(other -> stages.all().stream()
                        .anyMatch(stage -> !broken(BlowerEdits.choose(other).of(stage.room()))
                                .isEmpty()));
    }

    /** Four of 150 L/min at 560 each were chosen; what carries all costs 4 × 485 (blowers.csv: 370 to 600). */
    @Test
    void whatItCostsMoreIsAgainstTheBlowerOfNow() {
        Stages.Foresight foresight = stages(HALL).foresight().orElseThrow();

        assertThat(foresight.price()).isEqualTo(4 * (370 + 600) / 2.0);
        assertThat(foresight.more()).isEqualTo(4 * (370 + 600) / 2.0 - 4 * 560);
    }

    @Test
    void aWishThatNothingMeetsIsToldWithTheStepThatComesNearest() {
        Room silent = BASEMENT.withWishes(BASEMENT.wishes().withLoudestDba(OptionalDouble.of(10)));
        Repair repair = stages(silent).all().get(0).standing().repair().orElseThrow();

        assertThat(repair.mend()).isPresent();
        assertThat(repair.still()).map(Limit.Broken::limit).contains(Limit.NOISE);
    }

    /** What the pipes are judged by, the stages are judged by: 50 kPa to spare no blower of the bench has. */
    @Test
    void aStageThatLeavesLessThanTheSpareThatIsWishedForBreaks() {
        Room spare = BASEMENT.withWishes(BASEMENT.wishes().withIndexSparePa(OptionalDouble.of(50_000)));
        Stage now = stages(spare).all().get(0);

        assertThat(now.standing().breaks()).map(Limit.Broken::limit).contains(Limit.SPARE);
        assertThat(now.state()).isEqualTo(Stage.State.BREAKS);
    }

    @Test
    void racksThatSayNothingComeTogether() {
        Room silent = BASEMENT.withRacks(
                BASEMENT.racks().stream().map(rack -> rack.coming(Step.UNSAID)).toList());
        assertThat(stages(silent).all()).extracting(Stage::outlets).containsExactly(70, 88);
    }

    @Test
    void aStepThatIsLeftOutIsNoStage() {
        Room later = BASEMENT.withRacks(BASEMENT.racks().stream()
                .map(rack -> rack.coming(
                        rack.step().numbered(OptionalInt.of(2 * rack.step().number()))))
                .toList());
        assertThat(stages(later).all())
                .extracting(stage -> stage.when().number())
                .containsExactly(0, 2, 4);
    }

    @Test
    void aRoomWithoutPlannedRacksIsNow() {
        assertThat(stages(Rooms.small()).hasSteps()).isFalse();
        assertThat(stages(Rooms.small()).all()).hasSize(1);
    }

    /** With no blower drawn the plan recommends one for now, and all steps rest on that. */
    @Test
    void aRoomThatDrawsNoBlowerGrowsOnTheOneThatIsRecommended() {
        Room undrawn = BASEMENT.withBlowers(List.of());

        Stages stages = stages(undrawn);

        assertThat(stages.recommended()).isTrue();
        assertThat(stages.all())
                .hasSize(3)
                .allMatch(stage ->
                        stage.standing().blower().kind().equals(stages.blower().kind()));
    }

    @Test
    void aRoomThatIsAllPlannedBeginsWithItsFirstStep() {
        Room planned = BASEMENT.withRacks(BASEMENT.racks().stream()
                .map(rack -> rack.at(Rack.Stage.PLANNED))
                .toList());
        assertThat(stages(planned).all())
                .extracting(stage -> stage.when().number(), Stage::outlets)
                .containsExactly(tuple(1, 70 + 6), tuple(2, 70 + 6 + 12));
    }

    @Test
    void aRoomThatCannotBeSolvedHasNoStages() {
        assertThat(Staging.of(PLANNER, Rooms.empty(), Progress.UNHEARD)).isEmpty();
    }
}
