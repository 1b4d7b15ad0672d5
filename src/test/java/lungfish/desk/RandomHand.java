package lungfish.desk;

import java.util.Optional;
import java.util.Random;
import lungfish.edit.Edit;
import lungfish.edit.RandomEdits;
import lungfish.room.Room;

/** A keeper in a hurry: edits of every kind, now and then an undo or a redo. The same seed does the same things. */
final class RandomHand {
    private final Random random;

    RandomHand(long seed) {
        this.random = new Random(seed);
    }

    /** What is done to a room, wherever it lies. */
    interface Steps {
        Room room();

        void apply(Edit edit);

        void undo();

        void redo();
    }

    /** Goes on until the room is another. */
    void change(Steps steps) {
        Room before = steps.room();
        while (steps.room().equals(before)) {
            doSomething(steps);
        }
    }

    private void doSomething(Steps steps) {
        switch (random.nextInt(10)) {
            case 0 -> steps.undo();
            case 1 -> steps.redo();
            default -> {
                Optional<Edit> edit = RandomEdits.next(random, steps.room()).edit();
                edit.ifPresent(steps::apply);
            }
        }
    }
}
