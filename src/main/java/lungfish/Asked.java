package lungfish;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import lungfish.terminal.Terminal;

/** What a command line asks for: a room to be opened, or else a command. */
final class Asked {
    private static final String FIRST_ROOM = "basement-rainbows";
    private static final String OPEN = "open";

    private Asked() {}

    /**
     * The room to open, a file or the name of a demo room: that of {@code open ROOM}; a file alone, as desktops hand one to a
     * program; without a word the first demo room. Empty where a command is asked for.
     */
    static Optional<String> room(String... args) {
        return switch (args.length) {
            case 0 -> Optional.of(FIRST_ROOM);
            case 1 -> Optional.of(args[0]).filter(Asked::isFile);
            case 2 -> Optional.of(args[1]).filter(room -> args[0].equals(OPEN) && !room.startsWith("-"));
            default -> Optional.empty();
        };
    }

    /** A word alone is a file if it looks like a room file, or is there and is no command. */
    private static boolean isFile(String word) {
        boolean isOption = word.startsWith("-");
        return !isOption && (word.endsWith(".json") || (!Terminal.isCommand(word) && isThere(word)));
    }

    private static boolean isThere(String word) {
        return path(word).filter(Files::isRegularFile).isPresent();
    }

    /** Whether this system could have a file of this name. */
    static boolean isPath(String word) {
        return path(word).isPresent();
    }

    private static Optional<Path> path(String word) {
        try {
            return Optional.of(Path.of(word));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
