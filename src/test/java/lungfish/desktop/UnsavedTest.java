package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import lungfish.edit.ClimateEdits;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever would take a room from its window asks first where it has changes. Quitting: {@link FileJourneysTest}. */
final class UnsavedTest {
    private static final Map<String, Consumer<Bench>> WAYS = Map.of(
            "a file", bench -> bench.act(OpenRoom.class),
            "a demo room", bench -> bench.act(OpenDemo.class),
            "a new room", bench -> bench.act(NewRoom.class),
            "a recent room",
                    bench -> new OpenRecent(bench.pane(), bench.answers().open.orElseThrow()).act(),
            "closing", bench -> bench.act(CloseWindow.class));

    @TempDir
    Path folder;

    @Test
    void everyWayAsksAndStaysWhereOneThinksBetterOfIt() throws IOException {
        Path other = Files.write(folder.resolve("other.room.json"), DemoRooms.bytes("starting-out"));
        for (Map.Entry<String, Consumer<Bench>> way : WAYS.entrySet()) {
            Bench bench = new Bench(folder.resolve(way.getKey()), "garage-killifish");
            bench.answers().open = Optional.of(other);
            bench.answers().unsaved = Asking.Unsaved.STAY;
            bench.desk().apply(ClimateEdits.temperatureK(OptionalDouble.of(301)));
            Room mine = bench.desk().room();
            way.getValue().accept(bench);
            assertThat(bench.answers().questions).as(way.getKey()).isEqualTo(1);
            assertThat(bench.desk().room()).as(way.getKey()).isEqualTo(mine);
            bench.answers().unsaved = Asking.Unsaved.DROP;
            way.getValue().accept(bench);
            boolean isClosing = way.getKey().equals("closing");
            assertThat(bench.desk().room().equals(mine)).as(way.getKey()).isEqualTo(isClosing);
        }
    }
}
