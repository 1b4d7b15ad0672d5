package lungfish.edit;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.room.Room;

/** Ids that no other thing of the same kind has. Each is given once; what gave them remembers. */
final class Fresh {
    /** Room is left for what is hung on: an id has at most 64 letters. */
    private static final int LONGEST_STEM = 50;

    private static final int LETTERS = 26;

    private final Set<String> taken;

    private Fresh(Stream<String> taken) {
        this.taken = new HashSet<>(taken.toList());
    }

    static Fresh racks(Room room) {
        return new Fresh(room.racks().stream().map(rack -> rack.id().text()));
    }

    static Fresh shelves(Room room) {
        return new Fresh(Find.shelves(room).map(shelf -> shelf.id().text()));
    }

    static Fresh tanks(Room room) {
        return new Fresh(Find.tanks(room).map(tank -> tank.id().text()));
    }

    static Fresh outlets(Room room) {
        return new Fresh(Find.outlets(room).map(outlet -> outlet.id().text()));
    }

    static Fresh runs(Room room) {
        return new Fresh(room.runs().stream().map(run -> run.id().text()));
    }

    static Fresh gangs(Room room) {
        return new Fresh(room.gangs().stream().map(gang -> gang.id().text()));
    }

    static Fresh blowers(Room room) {
        return new Fresh(room.blowers().stream().map(blower -> blower.id().text()));
    }

    static Fresh batteries(Room room) {
        return new Fresh(
                room.backup().batteries().stream().map(battery -> battery.id().text()));
    }

    static Fresh circuits(Room room) {
        return new Fresh(room.circuits().stream().map(circuit -> circuit.id().text()));
    }

    static Fresh stirrers(Room room) {
        return new Fresh(room.stirrers().stream().map(stirrer -> stirrer.id().text()));
    }

    static Fresh of(Collection<String> taken) {
        return new Fresh(taken.stream());
    }

    /** "A", "B", … "Z", "A2", … */
    String letter() {
        return first(i -> letter(i, 'A') + (i < LETTERS ? "" : 1 + i / LETTERS));
    }

    /** "main", "main-2", … */
    String like(String wanted) {
        String stem = stem(wanted);
        return first(i -> i == 0 ? stem : stem + "-" + (i + 1));
    }

    /** "A-1", "A-2", … */
    String numbered(String of) {
        String stem = stem(of);
        return first(i -> stem + "-" + (i + 1));
    }

    /** "A-1-1-a", "A-1-1-b", … */
    String lettered(String of) {
        String stem = stem(of);
        return first(i -> stem + "-" + letter(i, 'a') + (i < LETTERS ? "" : 1 + i / LETTERS));
    }

    private static String letter(int number, char from) {
        return String.valueOf((char) (from + number % LETTERS));
    }

    private static String stem(String of) {
        return of.length() <= LONGEST_STEM ? of : of.substring(0, LONGEST_STEM);
    }

    private String first(IntFunction<String> candidate) {
        String id = IntStream.iterate(0, i -> i + 1)
                .mapToObj(candidate)
                .filter(each -> !taken.contains(each))
                .findFirst()
                .orElseThrow();
        taken.add(id);
        return id;
    }
}
