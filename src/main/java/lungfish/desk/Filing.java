package lungfish.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import lungfish.catalogue.Catalogue;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.Room;
import lungfish.roomfile.RoomFiles;

/** Reads and writes rooms away from the asker. */
final class Filing {
    private static final System.Logger LOG = System.getLogger(Filing.class.getName());

    private final Catalogue catalogue;
    private final Hands hands;
    private long lastOpening;

    Filing(Catalogue catalogue, Hands hands) {
        this.catalogue = catalogue;
        this.hands = hands;
    }

    /** Reads a file, and tells the front; not where another was asked for meanwhile. */
    void open(Path file, Consumer<Reading<Room>> then) {
        lastOpening++;
        long mine = lastOpening;
        later(() -> read(file), reading -> {
            if (mine == lastOpening) {
                then.accept(reading);
            }
        });
    }

    /** Writes a file, whole or not at all, and tells the front what went wrong, if anything did. */
    void save(Path file, Room room, Consumer<Optional<Problem>> then) {
        later(() -> write(file, room), then);
    }

    private <T> void later(Supplier<T> work, Consumer<T> then) {
        hands.disk().execute(() -> {
            T done = work.get();
            hands.front().execute(() -> then.accept(done));
        });
    }

    private Reading<Room> read(Path file) {
        try {
            return RoomFiles.open(file, catalogue);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return Reading.refused(List.of(fault(e, "a room file")));
        }
    }

    private static Optional<Problem> write(Path file, Room room) {
        try {
            return RoomFiles.save(file, room);
        } catch (RuntimeException e) {
            return Optional.of(fault(e, "a place that can be written"));
        }
    }

    private static Problem fault(Throwable thrown, String expected) {
        LOG.log(System.Logger.Level.ERROR, "a file failed", thrown);
        return new Problem("", "a fault of the program itself (" + thrown + ")", expected);
    }

    static Trouble notOpened(Path file, List<Problem> problems) {
        return new Trouble(file.getFileName() + " could not be opened", problems);
    }

    static Trouble changedMeanwhile(Path file) {
        return Trouble.of(
                file.getFileName() + " was not opened",
                new Problem("", "the room on the desk was changed while the file was being read", "to be asked again"));
    }
}
