package lungfish.everyday;

import java.util.List;
import lungfish.demand.Need;

/**
 * Which valves to turn, and how far, so that everybody gets what it had; the one that is to be turned furthest first.
 *
 * @param isBleedShut whether the bleed is to be shut first
 * @param share of what they had that everybody then gets; below 1 where the blower does not give more
 * @param restShare by how much the most changed outlet then still misses that, with the valves in these round steps
 */
public record Order(List<Turn> turns, boolean isBleedShut, double share, double restShare) {
    /**
     * One valve.
     *
     * @param from its opening as it stands, 0 shut to 1 open
     * @param to its opening then, in round steps
     * @param aimM3PerS what its outlet is to get
     * @param freeM3PerS what its outlet then gets
     */
    public record Turn(Need need, double from, double to, double aimM3PerS, double freeM3PerS) {
        /** How far it is turned: the same from a half to a quarter as from a quarter to an eighth. */
        double factor() {
            return to <= 0 || from <= 0 ? Double.POSITIVE_INFINITY : Math.max(from / to, to / from);
        }
    }

    public Order {
        turns = List.copyOf(turns);
    }
}
