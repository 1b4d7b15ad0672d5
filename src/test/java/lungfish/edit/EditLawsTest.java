package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lungfish.catalogue.CatalogueFiles;
import lungfish.desk.History;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Tank;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What holds for every edit, whatever a keeper does: sequences of 200, with sound numbers and slips, over rooms of every size. */
final class EditLawsTest {
    private static final int EDITS = 200;
    private static final List<Part.Kind> NAMED = List.of(
            Part.Kind.RACK,
            Part.Kind.SHELF,
            Part.Kind.TANK,
            Part.Kind.OUTLET,
            Part.Kind.RUN,
            Part.Kind.GANG,
            Part.Kind.BLOWER);
    private static final RoomReader READER = new RoomReader(CatalogueFiles.load());

    private static Room demo(String name) {
        return READER.read(DemoRooms.bytes(name)).match(room -> room, problems -> {
            throw new AssertionError(problems);
        });
    }

    private static List<Problem> problems(Room room) {
        Reading<Room> read = READER.read(RoomWriter.bytes(room));
        return read.problems();
    }

    /** Every room on the way can be filed and opened again; every undo and every redo gives the bytes of before. */
    private static void holds(Room start, long seed) {
        Random random = new Random(seed);
        History history = History.of("Open", start);
        List<String> saved = new ArrayList<>(List.of(RoomWriter.text(start)));
        int done = 0;
        for (int i = 0; i < EDITS; i++) {
            Optional<Edit> edit = RandomEdits.next(random, history.room()).edit();
            if (edit.isPresent()) {
                Room after = edit.get().of(history.room());
                assertThat(edit.get().of(history.room()))
                        .as("done again: %s", edit.get().done())
                        .isEqualTo(after);
                idsStay(edit.get(), history.room(), after);
                assertThat(problems(after))
                        .as("%s (edit %d)", edit.get().done(), i)
                        .isEmpty();
                History next = history.after(edit.get().done(), after);
                if (next.at() > history.at()) {
                    saved.add(RoomWriter.text(after));
                }
                history = next;
                done++;
            }
        }
        assertThat(done).as("edits that were done").isGreaterThan(EDITS / 10);
        undoneAndRedone(history, saved);
    }

    /** Only what is deleted loses its id; "the same outlets" deletes surplus ones. */
    private static void idsStay(Edit edit, Room before, Room after) {
        if (!edit.done().startsWith("Delete ") && !edit.done().startsWith("Same outlets")) {
            for (Part.Kind kind : NAMED) {
                assertThat(Parts.of(after, kind)).as(edit.done()).containsAll(Parts.of(before, kind));
            }
        }
    }

    private static void undoneAndRedone(History last, List<String> saved) {
        History history = last;
        for (int i = saved.size() - 1; i >= 0; i--) {
            assertThat(RoomWriter.text(history.room())).isEqualTo(saved.get(i));
            history = history.undone();
        }
        for (String text : saved) {
            assertThat(RoomWriter.text(history.room())).isEqualTo(text);
            history = history.redone();
        }
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void fromAnEmptyRoom(@ForAll long seed) {
        holds(Rooms.empty(), seed);
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void inASmallRoom(@ForAll long seed) {
        holds(Rooms.small(), seed);
    }

    @Property(tries = 6, shrinking = ShrinkingMode.OFF)
    void inTheRoomThatStartsOut(@ForAll long seed) {
        holds(demo("starting-out"), seed);
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void inTheGarage(@ForAll long seed) {
        holds(demo("garage-killifish"), seed);
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void inTheBasement(@ForAll long seed) {
        holds(demo("basement-rainbows"), seed);
    }

    @Property(tries = 2, shrinking = ShrinkingMode.OFF)
    void inTheClubHall(@ForAll long seed) {
        holds(demo("club-hall"), seed);
    }

    /** Moving, turning, lining up: racks and pipe change their places, and no outlet anything but its place on the pipe. */
    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void whatIsMovedIsNotOtherwiseChanged(@ForAll long seed) {
        Random random = new Random(seed);
        Room room = demo("garage-killifish");
        for (int i = 0; i < EDITS; i++) {
            AnyOf any = new AnyOf(random, room);
            Attempt attempt = any.one(List.of(
                    Moves.by(room, any.selection(), any.between(-1, 1), any.between(-1, 1)),
                    RackEdits.turn(room, any.racks(), any.below(4)),
                    Arranging.align(room, any.racks(), any.one(Arranging.Edge.class))));
            if (attempt.edit().isPresent()) {
                Room after = attempt.edit().orElseThrow().of(room);
                assertThat(untapped(after))
                        .as(attempt.edit().orElseThrow().done())
                        .isEqualTo(untapped(room));
                room = after;
            }
        }
    }

    private static List<Tank> untapped(Room room) {
        return Find.tanks(Each.outlet(room, outlet -> outlet.tappedAt(Optional.empty())))
                .toList();
    }
}
