package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Step;
import org.junit.jupiter.api.Test;

final class StepEditsTest {
    private static final RackId A = new RackId("A");
    private static final RackId B = new RackId("B");
    private static final RackId C = new RackId("C");

    private static final Room ROOM = aRoom().with(aRack("A").planned())
            .with(aRack("B").at(3, 1).planned(2, "in two years"))
            .with(aRack("C").at(0, 2).planned(2, "in two years"))
            .build();

    private static Step step(Room room, String rack) {
        return rack(room, rack).step();
    }

    @Test
    void aRackThatSaysNothingComesWithTheNextStep() {
        assertThat(step(ROOM, "A").number()).isEqualTo(1);
    }

    @Test
    void aRackTakesTheNameOfTheStepThatItJoins() {
        Room room = after(ROOM, StepEdits.come(ROOM, List.of(A), Optional.of(2)));
        assertThat(step(room, "A")).isEqualTo(step(ROOM, "B"));
    }

    @Test
    void aNameThatOthersShareStaysWithThem() {
        Room room = after(ROOM, StepEdits.come(ROOM, List.of(B), Optional.of(3)));
        assertThat(step(room, "B").name()).isEmpty();
        assertThat(step(room, "C").name()).contains("in two years");
    }

    @Test
    void aNameThatNobodySharesGoesAlong() {
        Room room = after(ROOM, StepEdits.come(ROOM, List.of(B, C), Optional.of(3)));
        assertThat(List.of(step(room, "B"), step(room, "C")))
                .allMatch(step -> step.number() == 3 && step.name().equals(Optional.of("in two years")));
    }

    @Test
    void namingAStepNamesItForAllItsRacks() {
        Room room = after(ROOM, StepEdits.name(ROOM, List.of(B), Optional.of("next spring")));
        assertThat(step(room, "C").name()).contains("next spring");
        assertThat(step(room, "A").name()).isEmpty();
    }

    @Test
    void aRackPutInPlaceKeepsWhatWasSaidOfIt() {
        Room there = after(ROOM, RackEdits.markInPlace(ROOM, List.of(B)));
        assertThat(after(there, RackEdits.markPlanned(there, List.of(B)))).isEqualTo(ROOM);
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(StepEdits.come(ROOM, List.of(A), Optional.of(2))).done())
                .isEqualTo("Plan a step for rack A");
    }

    @Test
    void thereAreTwentyStepsAtMost() {
        assertThat(sentence(StepEdits.come(ROOM, List.of(A), Optional.of(21))))
                .startsWith("There are 20 steps at most.");
    }
}
