package lungfish.desk;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import lungfish.json.Reading;

/**
 * What a program left that ended before its last changes were saved.
 *
 * @param at the autosave
 * @param holds what is in it, or why it cannot be read
 */
public record Leftover(Path at, Reading<Autosaved> holds) {
    /** The file that the room was to be saved to. */
    public Optional<Path> file() {
        return what().flatMap(Unsaved::file);
    }

    /** The name of the room. */
    public Optional<String> roomName() {
        return what().map(what -> what.room().name());
    }

    /** The last thing that was done: "Move rack B". */
    public Optional<String> done() {
        return what().map(Unsaved::done);
    }

    /** When that was. */
    public Optional<Instant> time() {
        return holds.value().map(Autosaved::at);
    }

    /** The machine that it ran on, where that is another: it may still run there. */
    public Optional<String> elsewhere() {
        return owner().filter(Owner::isElsewhere).map(Owner::machine);
    }

    Optional<Owner> owner() {
        return holds.value().map(Autosaved::owner);
    }

    Optional<Unsaved> what() {
        return holds.value().map(Autosaved::what);
    }
}
