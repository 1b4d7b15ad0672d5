package lungfish.edit;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;

/** The names that things of a kind have already. */
final class Taken {
    private Taken() {}

    static Set<String> rackNames(Room room) {
        return set(room.racks().stream().map(Rack::name));
    }

    static Set<String> tankNames(Room room) {
        return set(Find.tanks(room).map(Tank::name));
    }

    static Set<String> runNames(Room room) {
        return set(room.runs().stream().map(Run::name));
    }

    static Set<String> blowerNames(Room room) {
        return set(room.blowers().stream().map(Blower::name));
    }

    static Set<String> circuitNames(Room room) {
        return set(room.circuits().stream().map(Circuit::name));
    }

    private static Set<String> set(Stream<String> names) {
        return names.collect(Collectors.toCollection(HashSet::new));
    }
}
