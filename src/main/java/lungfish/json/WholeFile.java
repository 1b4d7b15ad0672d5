package lungfish.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * Reads a file as a whole, never more of it than is allowed: a device has no end, a pipe waits for somebody, and a file may grow
 * while it is read.
 */
public final class WholeFile {
    private WholeFile() {}

    /** Of a file that holds more than is allowed. */
    public static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1;

        private final long bytes;

        TooLarge(long bytes, long most) {
            super("it has " + bytes + " bytes or more, at most " + most + " are read");
            this.bytes = bytes;
        }

        /** How many it has, or at least. */
        public long bytes() {
            return bytes;
        }
    }

    /**
     * All bytes of a file, links followed.
     *
     * @param most that are read
     * @throws TooLarge where it holds more
     * @throws IOException with a reason for people, where it is not there, is a folder, a device or a pipe, or cannot be read
     */
    public static byte[] read(Path file, int most) throws IOException {
        BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
        if (found.isDirectory()) {
            throw new IOException("it is a folder");
        }
        if (!found.isRegularFile()) {
            throw new IOException("it is a device or a pipe, not a file");
        }
        if (found.size() > most) {
            throw new TooLarge(found.size(), most);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most);
            if (bytes.length == most && in.read() >= 0) {
                throw new TooLarge(most + 1L, most);
            }
            return bytes;
        }
    }

    /** Why a file could not be read, for people. */
    public static String reason(IOException e) {
        return e instanceof NoSuchFileException ? "it is not there" : String.valueOf(e.getMessage());
    }
}
