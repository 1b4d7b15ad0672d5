package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.plan.DemoPlans;
import lungfish.room.Rack;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

final class StageTest {
    @Test
    void theStagesOfTheClubHallAddUp() {
        Room hall = DemoPlans.room("club-hall");
        long planned = hall.racks().stream().filter(Rack::isPlanned).count();

        List<Stage> stages = Stage.of(hall);

        assertThat(stages).hasSizeGreaterThan(1);
        assertThat(stages.get(stages.size() - 1).room().racks()).noneMatch(Rack::isPlanned);
        assertThat(stages.get(0).room().racks().stream().filter(Rack::isPlanned))
                .hasSizeBetween(1, (int) planned - 1);
    }

    @Test
    void aRoomWithoutPlannedRacksHasNone() {
        assertThat(Stage.of(DemoPlans.room("garage-killifish"))).isEmpty();
    }
}
