package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.catalogue.BlowerClass;
import lungfish.room.OwnClasses;
import lungfish.room.Room;

/** Edits of the blower classes that a keeper has typed from a data sheet. They are kept in the room. */
public final class OwnBlowerEdits {
    private OwnBlowerEdits() {}

    /** A class that is new to the room, or another state of the one of its id. */
    public static Edit keep(BlowerClass kind, boolean isNew) {
        String done = (isNew ? "Add " : "Change ") + Words.midSentence(kind.name());
        return new Edit(done, room -> with(room, kept(room, kind)));
    }

    /** The class is forgotten; places that it has taken are left to the plan. */
    public static Edit remove(BlowerClass kind) {
        return new Edit(
                "Remove " + Words.midSentence(kind.name()), room -> with(without(room, kind), rest(room, kind)));
    }

    private static List<BlowerClass> kept(Room room, BlowerClass kind) {
        List<BlowerClass> all = new ArrayList<>(room.ownClasses().blowers());
        boolean isThere = all.stream().anyMatch(each -> each.id().equals(kind.id()));
        if (isThere) {
            all.replaceAll(each -> each.id().equals(kind.id()) ? kind : each);
        } else {
            all.add(kind);
        }
        return all;
    }

    private static List<BlowerClass> rest(Room room, BlowerClass kind) {
        return room.ownClasses().blowers().stream()
                .filter(each -> !each.id().equals(kind.id()))
                .toList();
    }

    private static Room without(Room room, BlowerClass kind) {
        Optional<String> named = Optional.of(kind.id());
        return room.withBlowers(room.blowers().stream()
                .map(blower -> blower.machine().equals(named) ? blower.withMachine(Optional.empty()) : blower)
                .toList());
    }

    private static Room with(Room room, List<BlowerClass> blowers) {
        return room.withOwnClasses(new OwnClasses(room.ownClasses().devices(), blowers));
    }

    /** An id that no class has, made of a name: {@code "own-my-blower"}. */
    public static String freeId(String name, Room room, Set<String> taken) {
        Set<String> all =
                room.ownClasses().blowers().stream().map(BlowerClass::id).collect(Collectors.toSet());
        all.addAll(taken);
        String words = name.toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String first = "own-" + (words.isEmpty() ? "blower" : words.substring(0, Math.min(words.length(), 40)));
        String id = first;
        for (int number = 2; all.contains(id); number++) {
            id = first + "-" + number;
        }
        return id;
    }
}
