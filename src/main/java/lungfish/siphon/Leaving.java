package lungfish.siphon;

import lungfish.demand.Need;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Seat;

/**
 * An outlet by which water can leave its tank: nothing holds it in the airline. Water rises there to the line of the tank as
 * the air goes, and further where something sucks. A valve that is shut holds it; an open one only slows it.
 *
 * @param outlet in the tank that would lose water
 * @param checkValve why nothing is known to hold it
 * @param depthM of the air release: when the line has sunk by this, air gets in and the water stands
 */
public record Leaving(Seat outlet, CheckValve checkValve, double depthM) {
    /** Why nothing is known to hold the water. */
    public enum CheckValve {
        /** There is none. */
        NONE,
        /** The room does not say; counted as none. */
        UNKNOWN
    }

    static boolean isHeld(Outlet outlet) {
        return outlet.checkValve()
                .filter(kind -> !kind.equals(Outlet.NO_CHECK_VALVE))
                .isPresent();
    }

    static Leaving of(Need need) {
        Seat seat = need.seat();
        return new Leaving(
                seat,
                seat.outlet().checkValve().isPresent() ? CheckValve.NONE : CheckValve.UNKNOWN,
                Math.max(0, Math.min(need.depthM().si(), seat.tank().waterDepthM())));
    }

    /** The water line of the tank, m above the floor. */
    public double lineM() {
        return outlet.waterLineM();
    }

    /** How far the rim, which the airline passes, stands above the water line, m. */
    public double overRimM() {
        return Math.max(0, rim().zM() - lineM());
    }

    Point rim() {
        return outlet.rim();
    }

    /**
     * Whether the rush of water into the airline carries it over the rim. Pushed by the depth of the air release, a column
     * without friction stops at twice that depth (work of the pressure, {@code ρ g d x}, against the weight lifted,
     * {@code ρ g x²/2}), which is that depth above the line. Friction only takes from it: the bound is on the safe side.
     */
    boolean passesItsRim() {
        return overRimM() <= depthM;
    }

    /** The most that can run out by it, m³: until the air release comes to air. */
    double mostM3() {
        return Vessel.runsOutM3(outlet.tank(), depthM);
    }
}
