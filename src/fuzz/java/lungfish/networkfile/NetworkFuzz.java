package lungfish.networkfile;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** Whatever bytes a network file holds, they are read or refused. */
final class NetworkFuzz {
    @FuzzTest(maxDuration = "60s")
    void noBytesMakeTheReaderThrow(byte[] bytes) {
        NetworkReader.read(bytes);
    }
}
