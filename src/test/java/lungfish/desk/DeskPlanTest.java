package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.catalogue.CatalogueFiles;
import lungfish.edit.BlowerEdits;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a desk shows while plans come and go. */
final class DeskPlanTest {
    private static final Planner PLANNER = new Planner(CatalogueFiles.load());
    private static final Edit WARMER = ClimateEdits.temperatureK(OptionalDouble.of(301));
    private static final Edit HIGHER = ClimateEdits.altitudeM(OptionalDouble.of(1600));

    @TempDir
    Path folder;

    private final Queued planning = new Queued();

    private Desk desk(Function<Room, Plan> planner) {
        Desks shared =
                Desks.in(folder, new Hands(Runnable::run, planning, Runnable::run, Runnable::run, Runnable::run));
        return new Desk(shared, planner, "Open", Rooms.small());
    }

    private Desk desk() {
        return desk(PLANNER::plan);
    }

    private static Optional<Room> planned(Desk desk) {
        return desk.plan().map(Plan::room);
    }

    @Test
    void aDeskWaitsForItsFirstPlan() {
        Desk desk = desk();
        assertThat(desk.plan()).isEmpty();
        assertThat(desk.isWaiting()).isTrue();
        Ear ear = Ear.on(desk);
        planning.runAll();
        assertThat(planned(desk)).hasValue(Rooms.small());
        assertThat(desk.isWaiting()).isFalse();
        assertThat(desk.isCurrent()).isTrue();
        assertThat(ear.changes()).isEqualTo(1);
    }

    @Test
    void afterAnEditTheOlderPlanStaysAndIsNotCurrent() {
        Desk desk = desk();
        planning.runAll();
        desk.apply(WARMER);
        assertThat(planned(desk)).hasValue(Rooms.small());
        assertThat(desk.isWaiting()).isTrue();
        assertThat(desk.isCurrent()).isFalse();
        planning.runAll();
        assertThat(planned(desk)).hasValue(WARMER.of(Rooms.small()));
        assertThat(desk.isCurrent()).isTrue();
    }

    @Test
    void manyEditsInARowAreOnePlan() {
        int[] plans = {0};
        Desk desk = desk(room -> {
            plans[0]++;
            return PLANNER.plan(room);
        });
        desk.apply(WARMER);
        desk.apply(HIGHER);
        desk.apply(BlowerEdits.bleedAsNeeded());
        planning.runAll();
        assertThat(plans[0]).isEqualTo(1);
        assertThat(planned(desk)).hasValue(desk.room());
    }

    @Test
    void undoAndRedoPlanTheRoomTheyLeadTo() {
        Desk desk = desk();
        desk.apply(WARMER);
        planning.runAll();
        desk.undo();
        assertThat(desk.room()).isEqualTo(Rooms.small());
        assertThat(desk.isWaiting()).isTrue();
        planning.runAll();
        assertThat(planned(desk)).hasValue(Rooms.small());
        desk.redo();
        planning.runAll();
        assertThat(planned(desk)).hasValue(WARMER.of(Rooms.small()));
    }

    @Test
    void whatChangesNothingIsNeitherPlannedNorTold() {
        Desk desk = desk();
        planning.runAll();
        Ear ear = Ear.on(desk);
        desk.undo();
        desk.redo();
        desk.apply(new Edit("Nothing", room -> room));
        assertThat(planning.waiting()).isZero();
        assertThat(ear.changes()).isZero();
    }

    @Test
    void anEditThatNoFileCouldHoldIsRefusedInWords() {
        Desk desk = desk();
        Ear ear = Ear.on(desk);
        desk.apply(ClimateEdits.altitudeM(OptionalDouble.of(20_000))); // highest ground is below 9000 m
        desk.apply(ClimateEdits.altitudeM(OptionalDouble.of(Double.NaN)));
        assertThat(desk.room()).isEqualTo(Rooms.small());
        assertThat(desk.history().toUndo()).isEmpty();
        assertThat(ear.troubles()).hasSize(2);
        assertThat(ear.troubles().get(0).text()).contains("Not possible: Change the altitude", "/climate/altitude_m");
    }

    @Test
    void aPlannerThatFailsBecomesAMessageAndTheNextEditIsPlanned() {
        Desk desk = desk(room -> {
            if (room.climate().temperatureK().isPresent()) {
                throw new IllegalStateException("no such air");
            }
            return PLANNER.plan(room);
        });
        planning.runAll();
        Ear ear = Ear.on(desk);
        desk.apply(WARMER);
        planning.runAll();
        assertThat(desk.planTrouble()).isPresent();
        assertThat(desk.isWaiting()).isFalse();
        assertThat(desk.isCurrent()).isFalse();
        assertThat(ear.troubles()).hasSize(1);
        assertThat(ear.troubles().get(0).text()).contains("could not be planned", "no such air");
        desk.undo();
        assertThat(desk.planTrouble()).isEmpty();
        planning.runAll();
        assertThat(desk.isCurrent()).isTrue();
    }

    @Test
    void aPlanOfTheRoomBeforeIsNotShownForTheRoomOpenedSince() {
        Queued front = new Queued();
        Desks shared = Desks.in(folder, new Hands(front, planning, Runnable::run, Runnable::run, Runnable::run));
        Desk desk = new Desk(shared, PLANNER::plan, "Open", Rooms.small());
        planning.runAll();
        desk.openDemo("starting-out");
        front.runAll();
        assertThat(desk.plan()).isEmpty();
        assertThat(desk.isWaiting()).isTrue();
        planning.runAll();
        front.runAll();
        assertThat(planned(desk)).hasValue(desk.room());
    }

    @Test
    void whatIsTriedIsPlannedAndIsNoStep() {
        Desk desk = desk();
        planning.runAll();
        desk.tryOut(WARMER);
        planning.runAll();
        assertThat(planned(desk)).hasValue(WARMER.of(Rooms.small()));
        assertThat(desk.seen()).isEqualTo(WARMER.of(Rooms.small()));
        assertThat(desk.room()).isEqualTo(Rooms.small());
        assertThat(desk.history().toUndo()).isEmpty();
        assertThat(desk.isChanged()).isFalse();
    }

    @Test
    void whatIsLeftIsPlannedAsItWas() {
        Desk desk = desk();
        desk.tryOut(WARMER);
        desk.leave();
        planning.runAll();
        assertThat(planned(desk)).hasValue(Rooms.small());
        assertThat(desk.seen()).isEqualTo(Rooms.small());
    }

    @Test
    void whatWasTriedAndIsKeptNeedsNoOtherPlan() {
        Desk desk = desk();
        desk.tryOut(WARMER);
        planning.runAll();
        desk.apply(WARMER);
        assertThat(desk.isCurrent()).isTrue();
        assertThat(desk.room()).isEqualTo(WARMER.of(Rooms.small()));
        desk.undo();
        planning.runAll();
        assertThat(planned(desk)).hasValue(Rooms.small());
    }

    @Test
    void anotherStepEndsWhatIsTried() {
        Desk desk = desk();
        desk.tryOut(WARMER);
        desk.apply(HIGHER);
        planning.runAll();
        assertThat(planned(desk)).hasValue(HIGHER.of(Rooms.small()));
        assertThat(desk.seen()).isEqualTo(HIGHER.of(Rooms.small()));
    }
}
