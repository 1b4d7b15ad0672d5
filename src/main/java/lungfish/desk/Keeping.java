package lungfish.desk;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where changes that are not saved are kept meanwhile.
 *
 * @param at the autosave; empty where none could be written, or none is needed
 * @param trouble why it is not beside the file, where it should be; empty where all is well
 */
public record Keeping(Optional<Path> at, Optional<String> trouble) {
    static final Keeping WELL = new Keeping(Optional.empty(), Optional.empty());
}
