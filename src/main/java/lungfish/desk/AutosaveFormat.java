package lungfish.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lungfish.catalogue.Catalogue;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonReader;
import lungfish.json.JsonWriter;
import lungfish.json.Problem;
import lungfish.json.Range;
import lungfish.json.Reading;
import lungfish.room.Room;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;

/**
 * An autosave as bytes: a head of JSON, which ends with the first line that is a brace alone, and the bytes of a room file.
 * Whoever cuts off the head has a room file.
 */
final class AutosaveFormat {
    private static final String FORMAT = "lungfish-autosave";
    private static final int VERSION = 1;
    private static final String END_OF_HEAD = "\n}\n";
    private static final Range A_PROCESS = Range.between(0, 1L << 53);

    private AutosaveFormat() {}

    /** What the head says of the room: its stamp tells a whole autosave from half of one. */
    private record Head(
            Optional<Path> file, Optional<Stamp> from, String done, Instant at, Owner owner, Stamp roomStamp) {}

    static byte[] bytes(Unsaved what, Instant at, Owner owner) {
        byte[] room = RoomWriter.bytes(what.room());
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(head(what, at, owner, Stamp.of(room)).getBytes(UTF_8));
        all.writeBytes(room);
        return all.toByteArray();
    }

    private static String head(Unsaved what, Instant at, Owner owner, Stamp roomStamp) {
        return JsonWriter.text(out -> out.text("format", FORMAT)
                .whole("version", VERSION)
                .maybeText("file", what.file().map(Path::toString))
                .maybeText("file_sha256", what.from().map(Stamp::sha256))
                .text("done", what.done())
                .text("at", at.toString())
                .text("machine", owner.machine())
                .whole("process", owner.pid())
                .maybeText("process_since", owner.since().map(Instant::toString))
                .text("room_sha256", roomStamp.sha256()));
    }

    static Reading<Autosaved> read(byte[] bytes, Catalogue catalogue) {
        int end = new String(bytes, ISO_8859_1).indexOf(END_OF_HEAD); // one letter a byte
        if (end < 0) {
            return refused("its head is not whole");
        }
        int roomFrom = end + END_OF_HEAD.length();
        return JsonReader.read(Arrays.copyOf(bytes, roomFrom), at -> at.object(AutosaveFormat::head))
                .match(
                        head -> read(head, Arrays.copyOfRange(bytes, roomFrom, bytes.length), catalogue),
                        Reading::refused);
    }

    private static Reading<Autosaved> read(Head head, byte[] room, Catalogue catalogue) {
        if (!Stamp.of(room).equals(head.roomStamp())) {
            return refused("the room in it is not whole");
        }
        Reading<Room> read = new RoomReader(catalogue).read(room);
        return read.map(there ->
                new Autosaved(new Unsaved(head.file(), head.from(), head.done(), there), head.at(), head.owner()));
    }

    private static Reading<Autosaved> refused(String found) {
        return Reading.refused(List.of(new Problem("", found, "an autosave as the program wrote it")));
    }

    private static Head head(Fields in) {
        in.oneOf("format", Map.of(FORMAT, fields -> true), false);
        in.required("version").whole(1, VERSION);
        return new Head(
                in.optional("file").map(at -> value(at, Path::of, "a path", Path.of(""))),
                in.maybeText("file_sha256").map(Stamp::new),
                in.text("done"),
                value(in.required("at"), Instant::parse, "a time", Instant.EPOCH),
                new Owner(
                        in.text("machine"),
                        (long) in.number("process", A_PROCESS),
                        in.optional("process_since").map(at -> value(at, Instant::parse, "a time", Instant.EPOCH))),
                new Stamp(in.text("room_sha256")));
    }

    private static <T> T value(At at, Function<String, T> reader, String expected, T placeholder) {
        String text = at.text();
        try {
            return text.isEmpty() ? placeholder : reader.apply(text);
        } catch (DateTimeException | InvalidPathException e) {
            at.problem("found \"" + text + "\"", expected);
            return placeholder;
        }
    }
}
