package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lungfish.catalogue.CatalogueFiles;
import lungfish.room.Room;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DemoRoomsTest {
    static List<Path> demoRooms() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-rooms"))) {
            return files.filter(file -> file.toString().endsWith(RoomFiles.ENDING))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void writingWhatWasReadGivesTheSameBytes(Path file) throws IOException {
        Room room = RoomFiles.open(file, CatalogueFiles.load()).orThrow();
        assertThat(RoomWriter.text(room)).isEqualTo(Files.readString(file));
    }
}
