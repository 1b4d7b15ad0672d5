package lungfish.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import lungfish.json.JsonReader;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.json.WholeFile;
import lungfish.roomfile.DemoRooms;
import org.jspecify.annotations.Nullable;

/** The bytes that a command is given: a file, or a resource of the jar. */
final class Input {
    private Input() {}

    /** A room: a file, or else the demo room of that name. */
    static Reading<byte[]> room(String fileOrDemo) {
        boolean isDemo = DemoRooms.NAMES.contains(fileOrDemo) && !isFile(fileOrDemo);
        return isDemo
                ? Reading.of(DemoRooms.bytes(fileOrDemo))
                : file(fileOrDemo, "a room file, or a demo room: " + String.join(", ", DemoRooms.NAMES));
    }

    static Reading<byte[]> network(String file) {
        return file(file, "a network file");
    }

    /**
     * A file that the jar carries.
     *
     * @param name below {@code lungfish/}
     */
    static byte[] resource(String name) {
        try (InputStream in = Input.class.getResourceAsStream("/lungfish/" + name)) {
            return readAll(in, name);
        } catch (IOException e) {
            throw new UncheckedIOException("the jar is damaged: " + name, e);
        }
    }

    /** A file of text that the jar carries. */
    static String text(String name) {
        return new String(resource(name), StandardCharsets.UTF_8);
    }

    private static byte[] readAll(@Nullable InputStream in, String name) throws IOException {
        if (in == null) {
            throw new IllegalStateException("the jar lacks " + name);
        }
        return in.readAllBytes();
    }

    private static boolean isFile(String name) {
        try {
            return Files.isRegularFile(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static Reading<byte[]> file(String name, String expected) {
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                return refused("'" + name + "' is a folder", expected);
            }
            return Reading.of(WholeFile.read(path, JsonReader.MOST_BYTES));
        } catch (WholeFile.TooLarge e) {
            return Reading.refused(List.of(JsonReader.tooLarge(e.bytes())));
        } catch (NoSuchFileException | InvalidPathException e) {
            return refused("there is no '" + name + "'", expected);
        } catch (AccessDeniedException e) {
            return refused("'" + name + "' may not be read", expected);
        } catch (IOException e) {
            return refused("'" + name + "' cannot be read (" + e.getMessage() + ")", expected);
        }
    }

    private static Reading<byte[]> refused(String found, String expected) {
        return Reading.refused(List.of(new Problem("", found, expected)));
    }
}
