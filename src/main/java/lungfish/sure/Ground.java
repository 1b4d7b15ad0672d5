package lungfish.sure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.growth.Grown;
import lungfish.growth.Stage;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;

/**
 * What is the same for all samples of a room, and may be read by several threads: the room and its stages as they are said,
 * the blowers, and where each input finds its draw.
 *
 * @param when how the growing room calls now
 * @param chosen the blower that the bands are about
 * @param candidates made for these mains, in the order of the plan
 * @param levels at the listener, for each class: no sample changes them
 */
record Ground(
        Basis now,
        Stage.When when,
        List<Planned> stages,
        Candidate chosen,
        List<Candidate> candidates,
        Map<String, OptionalDouble> levels,
        Layout layout,
        Widths widths) {
    /** A planned stage, with the blower of now in its places. */
    record Planned(Stage.When when, Basis basis, Fleet fleet) {}

    static Optional<Ground> of(Planner planner, Room room) {
        return planner.basis(room).map(now -> of(planner, now, Grown.steps(room)));
    }

    private static Ground of(Planner planner, Basis now, List<Grown> steps) {
        List<Candidate> ranked = now.ranked();
        Candidate chosen = now.chosen();
        List<Planned> later = new ArrayList<>();
        for (Grown step : steps.subList(1, steps.size())) {
            planner.basis(step.room())
                    .ifPresent(basis -> later.add(
                            new Planned(step.when(), basis, basis.like(chosen).fleet())));
        }
        return new Ground(
                now,
                steps.get(0).when(),
                later,
                chosen,
                ranked.stream().filter(Candidate::suitsMains).toList(),
                levels(ranked, chosen),
                layout(now, later),
                Widths.of(now.room(), now.catalogue()));
    }

    private static Map<String, OptionalDouble> levels(List<Candidate> ranked, Candidate chosen) {
        Map<String, OptionalDouble> levels = new HashMap<>();
        ranked.forEach(each -> levels.put(each.kind().id(), each.dba()));
        levels.put(chosen.kind().id(), chosen.dba());
        return levels;
    }

    private static Layout layout(Basis now, List<Planned> later) {
        List<List<Need>> rooms = new ArrayList<>();
        rooms.add(now.piped().needs());
        later.forEach(each -> rooms.add(each.basis().piped().needs()));
        return Layout.of(rooms);
    }

    OptionalDouble level(Fleet fleet) {
        return levels.getOrDefault(fleet.kind().id(), OptionalDouble.empty());
    }
}
