package lungfish.siphon;

import java.util.List;
import lungfish.demand.Need;
import lungfish.room.Blower;
import lungfish.room.Point;

/**
 * What is open to water once the air is gone: nodes of the pipe, what lies between them, and what hangs on them.
 *
 * @param places of the nodes
 * @param outlets whose tap valves are not shut
 * @param machines of which the height is known
 */
record Waterways(List<Point> places, List<Link> links, List<Hung> outlets, List<Standing> machines) {
    /** An outlet, and the node of its tap. */
    record Hung(Need need, int node) {}

    /** A machine, and the node at its outlet. */
    record Standing(Blower machine, Point place, int node) {}

    static final Waterways NONE = new Waterways(List.of(), List.of(), List.of(), List.of());

    Waterways {
        places = List.copyOf(places);
        links = List.copyOf(links);
        outlets = List.copyOf(outlets);
        machines = List.copyOf(machines);
    }
}
