package lungfish.desktop;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Refused;
import lungfish.plan.Plan;
import lungfish.room.Room;

/** An edit in the making: tried while the hand moves, so that every panel answers, and kept or left at the end. */
final class Gesture {
    private final View view;
    private Optional<Attempt> last = Optional.empty();
    private Optional<Plan> before = Optional.empty();

    Gesture(View view) {
        this.view = view;
    }

    boolean isGoingOn() {
        return last.isPresent();
    }

    void tryOut(Attempt attempt) {
        if (last.isEmpty()) {
            before = view.plan();
        }
        last = Optional.of(attempt);
        attempt.edit().ifPresentOrElse(view.desk()::tryOut, view.desk()::leave);
    }

    /** Makes it a step. What is new is chosen. Where it cannot be done nothing changes. */
    void keep() {
        Optional<Attempt> asked = last;
        last = Optional.empty();
        asked.flatMap(Attempt::edit).ifPresentOrElse(view::apply, view.desk()::leave);
    }

    /** As if it had not been. */
    void leave() {
        last = Optional.empty();
        view.desk().leave();
    }

    /** What comes of it, beside the hand: how it changes the outlets and the headroom, or why it cannot be done. */
    Optional<Sketch.Note> note(Spot at) {
        return note(at, List.of());
    }

    /** The same, after figures of what is drawn or dragged. */
    Optional<Sketch.Note> note(Spot at, List<String> figures) {
        return last.map(attempt -> attempt.refused()
                        .map(refused -> new Sketch.Note(at.xM(), at.yM(), says(refused), true))
                        .orElseGet(() -> new Sketch.Note(at.xM(), at.yM(), told(figures), false)))
                .filter(note -> !note.words().isEmpty());
    }

    private String told(List<String> figures) {
        return Stream.concat(figures.stream(), Stream.of(effect()))
                .filter(words -> !words.isEmpty())
                .collect(joining(" · "));
    }

    private String says(Refused refused) {
        return refused.sentence(view.quantities());
    }

    private String effect() {
        List<String> said = new ArrayList<>();
        int more = outlets(view.desk().seen()) - outlets(view.desk().room());
        if (more != 0) {
            said.add((more > 0 ? "+" : "−") + Math.abs(more) + (Math.abs(more) == 1 ? " outlet" : " outlets"));
        }
        left(view.plan())
                .ifPresent(now -> said.add(left(before)
                                .filter(then -> !then.equals(now))
                                .map(then -> then + " → ")
                                .orElse("")
                        + now + " left"));
        return String.join(": ", said);
    }

    private static int outlets(Room room) {
        return room.seats().size();
    }

    private static Optional<Integer> left(Optional<Plan> plan) {
        return plan.flatMap(Plan::headroom).map(headroom -> headroom.outlets());
    }
}
