package lungfish.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.room.Room;

/**
 * The rooms that led here, and those that were undone. Immutable; rooms share what did not change.
 *
 * @param steps from the first room on; never empty
 * @param at the step that is current
 */
public record History(List<Step> steps, int at) {
    /**
     * A room, and what was done to arrive at it.
     *
     * @param done fit to follow "Undo"; of the first step, how the room came here
     */
    public record Step(String done, Room room) {}

    public History {
        steps = List.copyOf(steps);
        if (at < 0 || at >= steps.size()) {
            throw new IllegalArgumentException("no step " + at + " among " + steps.size());
        }
    }

    /** A history that begins here. */
    public static History of(String done, Room room) {
        return new History(List.of(new Step(done, room)), 0);
    }

    /** The current room. */
    public Room room() {
        return steps.get(at).room();
    }

    /** One step on. What was undone is cut off. A room equal to the current one is no step. */
    public History after(String done, Room room) {
        if (room.equals(room())) {
            return this;
        }
        List<Step> kept = new ArrayList<>(steps.subList(0, at + 1));
        kept.add(new Step(done, room));
        return new History(kept, at + 1);
    }

    /** One step back; the same history where there is none. */
    public History undone() {
        return at == 0 ? this : new History(steps, at - 1);
    }

    /** One step forth again; the same history where there is none. */
    public History redone() {
        return at == steps.size() - 1 ? this : new History(steps, at + 1);
    }

    /** What {@link #undone} would take back. */
    public Optional<String> toUndo() {
        return at == 0 ? Optional.empty() : Optional.of(steps.get(at).done());
    }

    /** What {@link #redone} would do again. */
    public Optional<String> toRedo() {
        return at == steps.size() - 1
                ? Optional.empty()
                : Optional.of(steps.get(at + 1).done());
    }
}
