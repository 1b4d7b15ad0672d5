package lungfish.corpus;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Bytes that a fuzzer thinks of, guided by what of the program they reach; it begins with what was kept before. */
final class ListFuzz {
    static Stream<Arguments> kept() {
        return Corpus.of(Fed.LIST).stream().map(bytes -> Arguments.of((Object) bytes));
    }

    @MethodSource("kept")
    @FuzzTest(maxDuration = "150s")
    void isReadOrRefused(byte[] bytes) {
        Fed.LIST.take(bytes);
    }
}
