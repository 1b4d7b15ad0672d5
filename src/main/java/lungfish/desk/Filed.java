package lungfish.desk;

import java.nio.file.Path;
import java.util.Optional;
import lungfish.room.Room;

/**
 * What a room on the desk is compared with, to know whether it has changes that are not saved.
 *
 * @param file that the room is kept in; empty for one never saved
 * @param stamp what the file held when it was opened or saved last; empty where there was none
 * @param room that is in the file or, without one, that came to the desk; empty where what came was unsaved already
 */
record Filed(Optional<Path> file, Optional<Stamp> stamp, Optional<Room> room) {
    /** A room that is in no file, and has no changes yet. */
    static Filed nowhere(Room room) {
        return new Filed(Optional.empty(), Optional.empty(), Optional.of(room));
    }

    /** A room that was unsaved when it came, and is to be saved to a file that could not be read. */
    static Filed unknown(Optional<Path> file) {
        return new Filed(file, Optional.empty(), Optional.empty());
    }

    /** How a file is told from others. */
    static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }

    boolean isChanged(Room now) {
        return !room.equals(Optional.of(now));
    }

    /** What of a history is not saved. */
    Unsaved unsaved(History history) {
        return new Unsaved(
                file.map(Filed::whole), stamp, history.steps().get(history.at()).done(), history.room());
    }
}
