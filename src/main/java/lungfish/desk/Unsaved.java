package lungfish.desk;

import java.nio.file.Path;
import java.util.Optional;
import lungfish.room.Room;

/**
 * A room that is in no file yet.
 *
 * @param file that it will be saved to; empty for one never saved
 * @param from what the file held when it was opened or saved last
 * @param done the last thing that was done to it: "Move rack B"
 */
record Unsaved(Optional<Path> file, Optional<Stamp> from, String done, Room room) {}
