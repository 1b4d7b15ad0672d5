package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lungfish.edit.Attempt;
import lungfish.reason.Code;
import lungfish.room.Room;

/**
 * One kind of thing that keeps the air on, as its sheet shows it.
 *
 * @param says what is told where there is none of it
 * @param things those that there are
 * @param adding what makes another; empty where there is no more than one, or none to be made here
 * @param found the findings that are about it
 */
record BackupPart(String title, String says, List<Thing> things, Optional<Adding> adding, Set<Code> found) {
    BackupPart {
        things = List.copyOf(things);
        found = Set.copyOf(found);
    }

    /**
     * One of them.
     *
     * @param key by which it is known while it changes
     * @param name over its fields; empty where the title says it already
     * @param remove takes it away; empty where it cannot be taken away
     */
    record Thing(String key, String name, List<Property> fields, Optional<Function<Room, Attempt>> remove) {
        Thing {
            fields = List.copyOf(fields);
        }

        /** What its fields are called apart from those of others. */
        String called(String title) {
            return name.isEmpty() ? title : name;
        }
    }

    /** A button that makes one of several kinds; where there is but one kind, nothing is to be chosen. */
    record Adding(String words, List<Choice.Named<Runnable>> kinds) {
        Adding {
            kinds = List.copyOf(kinds);
        }
    }

    /** What its place on the sheet depends on, beside the room's numbers. */
    List<String> shape() {
        return List.of(
                title,
                things.stream()
                        .map(thing -> thing.key() + thing.name())
                        .toList()
                        .toString(),
                adding.map(Adding::words).orElse(""));
    }
}
