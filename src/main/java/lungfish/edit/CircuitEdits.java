package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** Edits of the protected circuits: what hangs on one of them fails together. */
public final class CircuitEdits {
    private CircuitEdits() {}

    /** A circuit of which nothing is known yet. */
    public static Attempt add(Room room) {
        return Edit.tried(room, "Add a circuit", before -> {
            List<Circuit> circuits = new ArrayList<>(before.circuits());
            String name = Names.unique("Circuit 1", Taken.circuitNames(before));
            CircuitId id = new CircuitId(Fresh.circuits(before).like("circuit"));
            circuits.add(new Circuit(id, name, Optional.empty(), Optional.empty()));
            return before.withCircuits(circuits);
        });
    }

    /** Takes it out of the room; of what hung on it the circuit is unknown. */
    public static Attempt remove(Room room, CircuitId id) {
        return named(room, id)
                .<Attempt>map(circuit -> Edit.tried(
                        room,
                        "Remove " + Words.named("circuit", circuit.name()),
                        before -> Sweep.of(before.withCircuits(
                                Each.kept(before.circuits(), each -> !each.id().equals(id))))))
                .orElse(Refused.nothing("circuit"));
    }

    public static Attempt rename(Room room, CircuitId id, String name) {
        return Names.trouble(name)
                .<Attempt>map(trouble -> trouble)
                .orElseGet(() -> change(room, id, "Rename ", circuit -> circuit.named(name)));
    }

    /** Whether it has residual-current (ground-fault) protection; empty: unknown. */
    public static Attempt protect(Room room, CircuitId id, Optional<Boolean> isProtected) {
        return change(room, id, "Set the protection of ", circuit -> circuit.protectedBy(isProtected));
    }

    /** Whether tank heaters hang on it; empty: unknown. */
    public static Attempt heaters(Room room, CircuitId id, Optional<Boolean> feedsHeaters) {
        return change(room, id, "Set the heaters of ", circuit -> circuit.feedingHeaters(feedsHeaters));
    }

    /** None, or one that the room has. */
    static boolean isThere(Room room, Optional<CircuitId> id) {
        return id.isEmpty() || named(room, id.get()).isPresent();
    }

    private static Optional<Circuit> named(Room room, CircuitId id) {
        return room.circuits().stream().filter(each -> each.id().equals(id)).findFirst();
    }

    private static Attempt change(Room room, CircuitId id, String verb, UnaryOperator<Circuit> change) {
        return named(room, id)
                .<Attempt>map(circuit -> Edit.tried(
                        room,
                        verb + Words.named("circuit", circuit.name()),
                        before -> before.withCircuits(Each.changed(
                                before.circuits(), Each.where(each -> each.id().equals(id), change)))))
                .orElse(Refused.nothing("circuit"));
    }
}
