package lungfish.sizing;

import java.util.function.Function;
import lungfish.demand.Upkeep;
import lungfish.network.Answer;
import lungfish.network.DropNeed;
import lungfish.network.Drops;
import lungfish.network.Network;
import lungfish.network.Refused;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.piping.PipedRoom;

/** Solves the tuned network of a room. */
public final class Needs {
    private Needs() {}

    /**
     * What a room needs, with its devices in a state.
     *
     * @param solved what to make of an answer
     * @param refused what to make of a network that cannot be solved
     */
    public static <R> R of(
            PipedRoom room, Fleet fleet, Upkeep upkeep, Function<Needed, R> solved, Function<Refused, R> refused) {
        Network network = room.network(upkeep, fleet.fixedSources(0));
        Answer answer = Solver.of(network).tuned();
        return answer.match(
                asSet -> {
                    throw new IllegalStateException("a tuned question has a tuned answer");
                },
                tuned -> solved.apply(of(room, tuned)),
                refused);
    }

    /** What a room needs, by the answer of its tuned network, be its numbers the room's own or somewhat others. */
    public static Needed of(PipedRoom room, Tuned tuned) {
        Network network = tuned.network();
        int index = tuned.indexDrop();
        double target = network.drops().get(index).targetM3PerS().orElse(0);
        DropNeed need = Drops.needed(network.conditions(), network.drops().get(index), target);
        double pressurePa = tuned.requiredGaugePa();
        return new Needed(
                pressurePa,
                tuned.totalFreeM3PerS(),
                room.needs().get(index),
                need,
                pressurePa - tuned.drop(index).tapGaugePa(),
                tuned);
    }
}
