package lungfish.roomfile;

import java.nio.charset.StandardCharsets;
import lungfish.json.JsonWriter;
import lungfish.room.Room;

/** Writes rooms in their one canonical form: the same room always gives the same bytes. */
public final class RoomWriter {
    private RoomWriter() {}

    /**
     * The text of the file.
     *
     * @throws IllegalArgumentException where a number of the room is not finite
     */
    public static String text(Room room) {
        return JsonWriter.text(out -> RoomFormat.write(out, room));
    }

    /** The bytes of the file, UTF-8. */
    public static byte[] bytes(Room room) {
        return text(room).getBytes(StandardCharsets.UTF_8);
    }
}
