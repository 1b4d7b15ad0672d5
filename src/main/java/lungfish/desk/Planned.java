package lungfish.desk;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/** The newest plan of a desk, and the asking for newer ones. */
final class Planned {
    private static final System.Logger LOG = System.getLogger(Planned.class.getName());

    /** A room to be planned, its number among all that were asked, and the number of the first one since it was opened. */
    private record Question(Room room, long number, long first) {}

    private final LatestWins<Question, Plan> worker;
    private final Runnable changed;
    private final Consumer<Trouble> tell;
    private long asked;
    private long first;
    private long answered;
    private @Nullable Plan plan;
    private @Nullable Trouble trouble;

    Planned(Function<Room, Plan> planner, Hands hands, Runnable changed, Consumer<Trouble> tell) {
        this.worker = new LatestWins<>(
                question -> planner.apply(question.room()),
                hands.planning(),
                hands.front(),
                this::answered,
                this::failed);
        this.changed = changed;
        this.tell = tell;
    }

    /** Begins with another room: no figure of the former one is shown any more. */
    void start(Room room) {
        first = asked + 1;
        plan = null;
        ask(room);
    }

    /** Asks for the plan of the room that is current now. */
    void ask(Room room) {
        asked++;
        trouble = null;
        worker.ask(new Question(room, asked, first));
    }

    Optional<Plan> plan() {
        return Optional.ofNullable(plan);
    }

    /** Whether {@link #plan} is that of the room last asked about. */
    boolean isCurrent() {
        return answered == asked;
    }

    /** Why the room last asked about has no plan. */
    Optional<Trouble> trouble() {
        return Optional.ofNullable(trouble);
    }

    private void answered(Question question, Plan answer) {
        if (question.first() == first) {
            answered = question.number();
            plan = answer;
            changed.run();
        }
    }

    private void failed(Question question, Throwable thrown) {
        LOG.log(System.Logger.Level.ERROR, "planning '" + question.room().name() + "' failed", thrown);
        if (question.number() == asked) {
            Trouble told = Trouble.of(
                    "This room could not be planned",
                    new Problem("", "a fault of the program itself (" + thrown + ")", "a plan; the room is kept"));
            trouble = told;
            changed.run();
            tell.accept(told);
        }
    }
}
