package lungfish.choice;

import java.util.Optional;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Room;

/** Which pipe, and the cheapest build with it. */
public record PipesAnswer(PipeStudy study, CheapestBuild cheapest) {
    /** For a room; empty where it has no main that can be solved. Studying the pipes is told as the first half of the work. */
    public static Optional<PipesAnswer> of(Room room, Planner planner, Progress progress) {
        Progress studying = (done, of) -> progress.at(done, 2 * of);
        Progress searching = (done, of) -> progress.at(of + done, 2 * of);
        return PipeStudy.of(room, planner, studying)
                .map(study -> new PipesAnswer(study, CheapestBuild.of(study, searching)));
    }
}
