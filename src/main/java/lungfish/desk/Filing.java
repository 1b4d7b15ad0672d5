package lungfish.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lungfish.catalogue.Catalogue;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.Room;
import lungfish.roomfile.RoomFiles;
import lungfish.roomfile.RoomWriter;

/** Reads and writes rooms away from the asker. */
final class Filing {
    private static final System.Logger LOG = System.getLogger(Filing.class.getName());

    private final Catalogue catalogue;
    private final Hands hands;
    private long lastOpening;

    /** What was written last, of which the asker may not have heard yet; touched at the disk only. */
    private Optional<Stamp> written = Optional.empty();

    Filing(Catalogue catalogue, Hands hands) {
        this.catalogue = catalogue;
        this.hands = hands;
    }

    /**
     * What a file held when it was opened.
     *
     * @param stamp taken before it was read: what another program wrote in between counts as a change
     */
    record Opened(Room room, Optional<Stamp> stamp) {
        Filed filed(Path file) {
            return new Filed(Optional.of(file), stamp, Optional.of(room));
        }
    }

    /** How a save ended: with what is in the file now, with a problem, or with neither since another changed the file. */
    record Saved(Optional<Stamp> stamp, Optional<Problem> problem) {}

    /** Reads a file, and tells the front; not where another was asked for meanwhile. */
    void open(Path file, Consumer<Reading<Opened>> then) {
        lastOpening++;
        long mine = lastOpening;
        hands.atTheDisk(() -> read(file), reading -> {
            if (mine == lastOpening) {
                then.accept(reading);
            }
        });
    }

    /** Writes a file, whole or not at all, and tells the front how it ended. */
    void save(Path file, Room room, Consumer<Saved> then) {
        hands.atTheDisk(() -> write(file, room), then);
    }

    /** The same, but not where the file is there and holds something else than expected. */
    void save(Path file, Optional<Stamp> expected, Room room, Consumer<Saved> then) {
        hands.atTheDisk(
                () -> {
                    Optional<Stamp> now = Stamp.of(file);
                    boolean isChanged = now.isPresent() && !now.equals(expected) && !now.equals(written);
                    return isChanged ? new Saved(Optional.empty(), Optional.empty()) : write(file, room);
                },
                then);
    }

    private Reading<Opened> read(Path file) {
        try {
            Optional<Stamp> stamp = Stamp.of(file);
            return RoomFiles.open(file, catalogue).map(room -> new Opened(room, stamp));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return Reading.refused(List.of(fault(e, "a room file")));
        }
    }

    private Saved write(Path file, Room room) {
        try {
            Optional<Problem> problem = RoomFiles.save(file, room);
            if (problem.isEmpty()) {
                written = Optional.of(Stamp.of(RoomWriter.bytes(room)));
            }
            return new Saved(problem.isEmpty() ? written : Optional.empty(), problem);
        } catch (RuntimeException e) {
            return new Saved(Optional.empty(), Optional.of(fault(e, "a place that can be written")));
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
