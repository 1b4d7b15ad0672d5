package lungfish.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import lungfish.json.JsonReader;
import lungfish.json.WholeFile;

/**
 * Tells whether a file still holds what it held: times are too coarse for that, and other programs set them as they like.
 *
 * @param sha256 of all bytes (FIPS 180-4), in small hexadecimal digits
 */
record Stamp(String sha256) {
    static Stamp of(byte[] bytes) {
        try {
            return new Stamp(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** That of a file; empty where there is none that can be read. */
    static Optional<Stamp> of(Path file) {
        try {
            return Optional.of(of(WholeFile.read(file, JsonReader.MOST_BYTES)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
