package lungfish.roomfile;

import java.nio.file.Path;
import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Room;

/** Saves a demo room into a file, and says how that went: what {@link RealDiskTest} runs as another user. */
final class SavedOnce {
    private SavedOnce() {}

    public static void main(String[] args) {
        Room room = new RoomReader(CatalogueFiles.load())
                .read(DemoRooms.bytes("basement-rainbows"))
                .value()
                .orElseThrow();
        Optional<Problem> trouble = RoomFiles.save(Path.of(args[0]), room);
        System.out.println(trouble.map(Problem::found).orElse("saved"));
    }
}
