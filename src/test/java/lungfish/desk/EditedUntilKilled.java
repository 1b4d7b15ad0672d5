package lungfish.desk;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import lungfish.edit.Edit;
import lungfish.room.Room;

/**
 * A program without a window that opens a file and changes its room until it is killed. It writes a number a line: so many
 * changes are on the desk, and shown. Now and then it saves. It has the hands of the real program, but plans nothing.
 */
final class EditedUntilKilled implements RandomHand.Steps {
    private final Executor front = Executors.newSingleThreadExecutor();
    private final RandomHand hand;
    private final Random saves;
    private final Desk desk;
    private int done;

    private EditedUntilKilled(Path config, long seed) {
        Hands real = Hands.behind(front);
        Hands hands = new Hands(front, work -> {}, real.disk(), real.keeping(), real.ahead());
        this.hand = new RandomHand(seed);
        this.saves = new Random(seed);
        this.desk = Desks.in(config, hands).withDemo("starting-out");
    }

    /** The folder of preferences, the file and the seed. */
    public static void main(String[] args) {
        EditedUntilKilled program = new EditedUntilKilled(Path.of(args[0]), Long.parseLong(args[2]));
        Path file = Path.of(args[1]);
        program.desk.addListener(new Ear() {
            private boolean isOpen;

            @Override
            public void changed() {
                if (!isOpen && program.desk.file().isPresent()) {
                    isOpen = true;
                    program.later();
                }
            }
        });
        program.front.execute(() -> program.desk.open(file));
    }

    private void later() {
        front.execute(() -> {
            hand.change(this);
            done++;
            System.out.println(done);
            later();
        });
    }

    @Override
    public Room room() {
        return desk.room();
    }

    @Override
    public void apply(Edit edit) {
        desk.apply(edit);
        if (saves.nextInt(12) == 0) {
            desk.save(() -> {}, () -> {});
        }
    }

    @Override
    public void undo() {
        desk.undo();
    }

    @Override
    public void redo() {
        desk.redo();
    }
}
