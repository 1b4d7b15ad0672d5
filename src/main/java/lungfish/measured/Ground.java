package lungfish.measured;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.demand.Upkeep;
import lungfish.network.Conditions;
import lungfish.network.Network;
import lungfish.piping.PipedRoom;
import lungfish.plan.Plan;
import lungfish.reason.Assumable;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.sizing.Fleet;

/**
 * What the plan says of a room, before anything was read in it.
 *
 * @param network clean, without sources; drop {@code i} is need {@code i}
 * @param holdPa gauge at which the room is meant to run with new blowers
 * @param jarM3 the keeper's usual jar
 */
record Ground(
        Plan plan, Catalogue catalogue, PipedRoom piped, Network network, Fleet fleet, double holdPa, double jarM3) {
    /** Empty where the room has no pipe, no outlets or no blower. */
    static Optional<Ground> of(Plan plan, Catalogue catalogue) {
        return plan.piped().flatMap(piped -> plan.duty()
                .map(duty -> new Ground(
                        plan,
                        catalogue,
                        piped,
                        piped.network(Upkeep.CLEAN, List.of()),
                        duty.candidate().fleet(),
                        duty.candidate().fresh().gaugePa(),
                        plan.room()
                                .wishes()
                                .jarM3()
                                .orElse(catalogue.assumed(Assumable.JAR).si()))));
    }

    List<Need> needs() {
        return piped.needs();
    }

    Conditions conditions() {
        return network.conditions();
    }

    Surroundings around() {
        return Surroundings.of(plan.room(), catalogue);
    }

    /** Whether a bleed stands open; elsewhere the outlets take all that the blowers give. */
    boolean isBled() {
        return !(fleet.bleed() instanceof Blower.Unbled);
    }

    /** Its number among the needs; −1 where the room has no such outlet. */
    int outlet(OutletId id) {
        for (int i = 0; i < needs().size(); i++) {
            if (needs().get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}
