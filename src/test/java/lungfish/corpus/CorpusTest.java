package lungfish.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a coverage-guided fuzzer found worth keeping, and what people are known to get wrong, fed to the readers in every build: a
 * line of base64 for each, in {@code corpus/*.txt}. No reader throws, and none takes more memory than is stated here.
 */
final class CorpusTest {
    /** Beside what it reads: the tree, messages, a catalogue looked at once. */
    private static final long BYTES_AT_LEAST = 24L << 20;

    /** For each byte that it reads: the text, the tree of it, what is made of that. */
    private static final long BYTES_PER_BYTE = 600;

    private static final com.sun.management.ThreadMXBean THREADS =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** Classes that are loaded by the first to come are nobody's fault. */
    @BeforeEach
    void warm() {
        for (Fed fed : Fed.values()) {
            fed.take(new byte[0]);
        }
    }

    @ParameterizedTest
    @EnumSource(Fed.class)
    void nothingOfTheCorpusThrowsOrFillsTheMemory(Fed fed) {
        List<byte[]> corpus = Corpus.of(fed);

        assertThat(corpus).hasSizeGreaterThan(20);
        for (byte[] bytes : corpus) {
            assertThat(taken(fed, bytes))
                    .as(() -> Base64.getEncoder().encodeToString(bytes))
                    .isLessThan(BYTES_AT_LEAST + BYTES_PER_BYTE * bytes.length);
        }
    }

    /** A hundred thousand brackets, a number of a million digits, a text of a megabyte: too long to be kept in a file. */
    @ParameterizedTest
    @EnumSource(Fed.class)
    void deepAndLongThingsStayWithinTheBound(Fed fed) {
        for (String text : List.of(
                "[".repeat(100_000),
                "{\"a\":".repeat(100_000),
                "9".repeat(1_000_000),
                "\"" + "x".repeat(1_000_000) + "\"",
                "1,".repeat(300_000),
                "a;b\n".repeat(200_000))) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            assertThat(taken(fed, bytes))
                    .as(text.substring(0, 10))
                    .isLessThan(BYTES_AT_LEAST + BYTES_PER_BYTE * bytes.length);
        }
    }

    private static long taken(Fed fed, byte[] bytes) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        fed.take(bytes);
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }
}
