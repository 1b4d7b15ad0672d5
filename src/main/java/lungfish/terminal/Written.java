package lungfish.terminal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import lungfish.json.Problem;
import lungfish.roomfile.AtomicSave;

/**
 * A file that a command is asked to write beside its answer.
 *
 * @param option that asked for it
 * @param endings that its name may have; a name with another one, such as that of a room, is never written over
 */
record Written(String option, Path file, List<String> endings) {
    /** The ending that the name has. */
    Optional<String> ending() {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return endings.stream().filter(name::endsWith).findFirst();
    }

    /** Writes it, whole or not at all; tells what stands in the way. */
    Optional<Problem> trouble(Supplier<byte[]> bytes) {
        if (ending().isEmpty()) {
            return Optional.of(cannot("its name does not end with " + String.join(", ", endings)));
        }
        if (Files.isDirectory(file)) {
            return Optional.of(cannot("it is a folder"));
        }
        try {
            AtomicSave.onThisDisk().save(file, bytes.get());
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(cannot(reason(e)));
        }
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        return e instanceof AccessDeniedException ? "nothing may be written there" : String.valueOf(e.getMessage());
    }

    private Problem cannot(String why) {
        return new Problem(
                "",
                option + ": " + file + " cannot be written: " + why,
                "a name that ends with " + String.join(" or ", endings) + ", in a folder that may be written to");
    }
}
