package lungfish.growth;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.plan.Basis;
import lungfish.sizing.Fleet;

/** Looks for the class that, bought today in place of as many machines as now, carries a room through all its stages. */
final class Foreseeing {
    private Foreseeing() {}

    /** The cheapest that does; a machine that the keeper has already is none where several are wanted. */
    static Optional<Stages.Foresight> of(List<Basis> stages, Fleet now) {
        int machines = now.machines();
        return stages.get(0).buyable().stream()
                .filter(kind -> carries(kind, stages))
                .min(Comparator.comparingDouble(BlowerClass::price).thenComparing(BlowerClass::id))
                .map(kind -> new Stages.Foresight(
                        kind, machines, machines * kind.price(), machines * kind.price() - now.price()));
    }

    private static boolean carries(BlowerClass kind, List<Basis> stages) {
        return stages.stream()
                .allMatch(basis -> Breaks.of(basis, basis.judge(kind)).isEmpty());
    }
}
