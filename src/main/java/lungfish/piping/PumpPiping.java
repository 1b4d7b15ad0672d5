package lungfish.piping;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Source;
import lungfish.room.Point;
import lungfish.room.Room;

/** The network of a small pump of today: its outlets hang on it by their airlines, with no pipe between. */
public final class PumpPiping {
    private PumpPiping() {}

    /**
     * The network of one pump, valves as filed.
     *
     * @param served the outlets that it feeds, one or more
     * @param source the pump; its node is the only one
     * @param place where it stands; absent: beside each tank
     */
    public static Network of(Room room, List<Need> served, Source source, Optional<Point> place, Catalogue catalogue) {
        Conditions conditions = Piping.conditions(Surroundings.of(room, catalogue));
        DropMaker maker = new DropMaker(catalogue, conditions.waterDensityKgPerM3());
        List<Drop> drops = served.stream()
                .map(need -> maker.drop(
                        need, source.node(), place.orElseGet(() -> need.seat().rim())))
                .toList();
        return new Network(conditions, List.of(source.node()), List.of(), drops, List.of(source), Optional.empty());
    }
}
