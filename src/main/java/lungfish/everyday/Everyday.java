package lungfish.everyday;

import java.util.Optional;
import java.util.Set;
import lungfish.catalogue.Catalogue;
import lungfish.network.AsSet;
import lungfish.piping.PipedRoom;
import lungfish.plan.Plan;
import lungfish.room.OutletId;

/** Asks what everyday disturbances do to a planned room. */
public final class Everyday {
    private Everyday() {}

    /**
     * One disturbance.
     *
     * @param trial of that plan: as its valves should be set, or as they are
     * @param meant the outlets pointed at, others than those in place are passed over; empty: the whole room, which means one
     *     of its airlines or valves, the one that matters most
     * @param catalogue that the plan was made with
     * @return empty where there is a {@link Lack}
     */
    public static Optional<Disturbed> of(
            Plan plan, AsSet trial, Disturbance.Kind kind, Set<OutletId> meant, Catalogue catalogue) {
        if (Lack.of(plan, kind, meant).isPresent()) {
            return Optional.empty();
        }
        PipedRoom piped = plan.piped().orElseThrow();
        Disturbance what = new Targets(piped.needs(), trial).of(kind, meant);
        Valves valves = Valves.of(plan, piped.needs(), catalogue);
        return new Answering(
                        new Change(what, piped),
                        valves,
                        plan.duty().orElseThrow().candidate().fleet(),
                        trial)
                .answer();
    }
}
