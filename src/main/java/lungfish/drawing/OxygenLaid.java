package lungfish.drawing;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.room.Tank;

/**
 * The oxygen of every tank at one time of an outage, as it is laid over a drawing.
 *
 * @param isCurrent whether it is that of the room as it is now; an older one is drawn soft
 */
public record OxygenLaid(OutagePlayed played, Case how, double atS, boolean isCurrent) {
    /** Which figure is meant, in a word or two. */
    public static String words(Case how) {
        return switch (how) {
            case LIKELY -> "likely";
            case CAUTIOUS -> "at worst";
        };
    }

    /** A tank of this outage; empty for one that is only planned. */
    public Optional<TankDrill> drill(Tank tank) {
        return played.tank(tank.id());
    }

    /** How it stands now. */
    public Optional<OxygenState> state(Tank tank) {
        return drill(tank).map(each -> OutagePlayed.state(each, how, atS));
    }

    /** Its oxygen now, g/m³. */
    public OptionalDouble levelGPerM3(Tank tank) {
        return drill(tank).map(each -> OutagePlayed.levelGPerM3(each, how, atS)).orElse(OptionalDouble.empty());
    }

    /** How full a gauge stands: 1 is the highest level of any tank. */
    OptionalDouble share(Tank tank) {
        return levelGPerM3(tank).stream().map(this::shareOf).findFirst();
    }

    /** Where a level stands on the same gauge. */
    double shareOf(double gPerM3) {
        return Math.min(1, gPerM3 / played.band().topGPerM3());
    }
}
