package lungfish.corpus;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** Bytes that a fuzzer thinks of, guided by what of the program they reach. */
final class QuantityFuzz {
    @FuzzTest(maxDuration = "150s")
    void isReadOrRefused(byte[] bytes) {
        Fed.QUANTITY.take(bytes);
    }
}
