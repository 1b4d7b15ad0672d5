package lungfish.roomfile;

import com.code_intelligence.jazzer.junit.FuzzTest;
import lungfish.catalogue.CatalogueFiles;

/** Whatever bytes a room file holds, they are read or refused. */
final class RoomFuzz {
    private static final RoomReader READER = new RoomReader(CatalogueFiles.load());

    @FuzzTest(maxDuration = "60s")
    void noBytesMakeTheReaderThrow(byte[] bytes) {
        READER.read(bytes);
    }
}
