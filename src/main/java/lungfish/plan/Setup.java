package lungfish.plan;

import java.util.List;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Demand;
import lungfish.demand.Demands;
import lungfish.demand.Surroundings;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/**
 * The room with what is known at once: its surroundings, its demand, and the blowers that the plan is about.
 *
 * @param planned the blowers drawn as planned; where none is drawn, one with nothing said of it
 */
record Setup(Room room, Catalogue catalogue, Surroundings surroundings, Demand demand, List<Blower> planned) {
    private static final Blower UNDRAWN = Blower.planned(new BlowerId("planned"));

    static Setup of(Room room, Catalogue catalogue) {
        List<Blower> drawn = room.blowers(Blower.Role.PLANNED);
        return new Setup(
                room,
                catalogue,
                Surroundings.of(room, catalogue),
                Demands.of(room, catalogue),
                drawn.isEmpty() ? List.of(UNDRAWN) : drawn);
    }
}
