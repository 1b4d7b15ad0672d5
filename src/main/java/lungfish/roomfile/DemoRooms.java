package lungfish.roomfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The demo rooms that the program carries. All are invented. */
public final class DemoRooms {
    /** Their names, from the smallest. */
    public static final List<String> NAMES =
            List.of("starting-out", "garage-killifish", "basement-rainbows", "club-hall");

    private DemoRooms() {}

    /**
     * The file of one of them.
     *
     * @param name one of {@link #NAMES}
     */
    public static byte[] bytes(String name) {
        String resource = "/lungfish/demo-rooms/" + name + RoomFiles.ENDING;
        try (InputStream in = DemoRooms.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no demo room '" + name + "'");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the jar is damaged: " + resource, e);
        }
    }
}
