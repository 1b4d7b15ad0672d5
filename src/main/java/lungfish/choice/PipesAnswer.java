package lungfish.choice;

import java.util.Optional;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Room;

/** Which pipe, and the cheapest build with it. */
public record PipesAnswer(PipeStudy study, CheapestBuild cheapest) {
    /** For a room; empty where it has no main that can be solved. */
    public static Optional<PipesAnswer> of(Room room, Planner planner, Progress progress) {
        return PipeStudy.of(room, planner, progress)
                .map(study -> new PipesAnswer(study, CheapestBuild.of(study, progress)));
    }
}
