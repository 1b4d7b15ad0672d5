package lungfish.corpus;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** What was kept for each reader: {@code corpus/*.txt}, a line of base64 for each. */
final class Corpus {
    private Corpus() {}

    /** All that was kept for one reader. */
    static List<byte[]> of(Fed fed) {
        String name = "/lungfish/corpus/" + fed.name().toLowerCase(Locale.ROOT) + ".txt";
        try (InputStream in = Corpus.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .map(line -> Base64.getDecoder().decode(line))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
