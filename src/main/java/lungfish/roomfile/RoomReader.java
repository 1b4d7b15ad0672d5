package lungfish.roomfile;

import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.json.At;
import lungfish.json.JsonReader;
import lungfish.json.Reading;
import lungfish.room.Room;

/**
 * Reads room files. The answer is a room that is sound as a whole ({@link RoomChecks}), or every problem with the file,
 * each with its place.
 */
public final class RoomReader {
    private final Catalogue catalogue;

    /**
     * A reader of rooms.
     *
     * @param catalogue the classes that a room may name, beside its own
     */
    public RoomReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Reads the bytes of a file. */
    public Reading<Room> read(byte[] bytes) {
        return JsonReader.read(bytes, this::checked).map(Optional::orElseThrow);
    }

    /** Reads a text. */
    public Reading<Room> read(String text) {
        return JsonReader.read(text, this::checked).map(Optional::orElseThrow);
    }

    private Optional<Room> checked(At at) {
        Optional<Room> room = at.object(RoomFormat::read);
        room.ifPresent(there -> RoomChecks.problems(there, catalogue).forEach(at::tell));
        return room;
    }
}
