package lungfish.roomfile;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.json.JsonReader;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.json.WholeFile;
import lungfish.room.Room;

/** Opens and saves room files. What the disk refuses comes back as a problem with the whole file. */
public final class RoomFiles {
    /** How the name of a room file ends. */
    public static final String ENDING = ".room.json";

    private RoomFiles() {}

    public static Reading<Room> open(Path file, Catalogue catalogue) {
        try {
            return new RoomReader(catalogue).read(WholeFile.read(file, JsonReader.MOST_BYTES));
        } catch (WholeFile.TooLarge e) {
            return Reading.refused(List.of(JsonReader.tooLarge(e.bytes())));
        } catch (IOException e) {
            return Reading.refused(List.of(new Problem("", "it cannot be read: " + reason(e), "a file that can be")));
        }
    }

    /** Saves a room so that the file holds either all of the old one or all of the new one, whatever fails. */
    public static Optional<Problem> save(Path file, Room room) {
        try {
            AtomicSave.onThisDisk().save(file, RoomWriter.bytes(room));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Problem(
                    "", "it could not be saved and was left as it was: " + reason(e), "a place that can be written"));
        }
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return e instanceof NoSuchFileException ? "there is no " + message : String.valueOf(message);
    }
}
