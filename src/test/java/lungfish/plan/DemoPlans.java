package lungfish.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.room.Room;
import lungfish.roomfile.RoomReader;

/** The demo rooms and their plans, for tests. */
public final class DemoPlans {
    public static final Catalogue CATALOGUE = CatalogueFiles.load();

    private DemoPlans() {}

    /** Their names. */
    public static Stream<String> names() {
        return Stream.of("starting-out", "garage-killifish", "basement-rainbows", "club-hall");
    }

    public static Room room(String name) {
        try (InputStream file = DemoPlans.class.getResourceAsStream("/lungfish/demo-rooms/" + name + ".room.json")) {
            if (file == null) {
                throw new IllegalArgumentException("no demo room " + name);
            }
            return new RoomReader(CATALOGUE)
                    .read(file.readAllBytes())
                    .value()
                    .orElseThrow(() -> new IllegalStateException(name + " has problems"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Plan plan(String name) {
        return new Planner(CATALOGUE).plan(room(name));
    }
}
