package lungfish.sizing;

import lungfish.blower.Wear;
import lungfish.room.Blower;

/**
 * Finds where a fleet runs when its outlets, tuned, take just their targets.
 *
 * <p>Bled to a pressure, it gives what its curve gives there, and the rest is let out. Unbled, the pressure rises until it
 * gives just the targets. Where the room does not say, it is bled to what the room needs and the wished spare: cooler,
 * longer lived, and the valves are easier to set than with many kilopascals behind them.
 */
public final class Runs {
    private static final int HALVINGS = 80;

    private final double neededPa;
    private final double neededM3PerS;
    private final double sparePa;

    /**
     * For a room.
     *
     * @param neededPa gauge, at the blowers' outlets
     * @param neededM3PerS sum of the targets
     * @param sparePa wished for at the index outlet
     */
    public Runs(double neededPa, double neededM3PerS, double sparePa) {
        this.neededPa = neededPa;
        this.neededM3PerS = neededM3PerS;
        this.sparePa = sparePa;
    }

    /** Where the fleet runs. */
    public Running of(Fleet fleet, Wear wear) {
        Blower.Bleed bleed = fleet.bleed();
        if (bleed instanceof Blower.BledTo bled) {
            return bledTo(bled.gaugePa().orElse(neededPa + sparePa), fleet, wear);
        }
        return bleed instanceof Blower.Unbled ? unbled(fleet, wear) : bledTo(neededPa + sparePa, fleet, wear);
    }

    private Running bledTo(double gaugePa, Fleet fleet, Wear wear) {
        return fleet.freeAt(gaugePa, wear) < neededM3PerS ? unbled(fleet, wear) : at(gaugePa, fleet, wear);
    }

    private Running unbled(Fleet fleet, Wear wear) {
        return at(unbledPa(fleet, wear), fleet, wear);
    }

    /** The pressure at which the fleet gives just the targets; 0 where it cannot even in the open. */
    private double unbledPa(Fleet fleet, Wear wear) {
        double low = 0;
        double high = fleet.shutPa(wear);
        if (fleet.freeAt(0, wear) <= neededM3PerS || !Double.isFinite(high)) {
            return 0;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean more = fleet.freeAt(middle, wear) > neededM3PerS;
            low = more ? middle : low;
            high = more ? high : middle;
        }
        return low;
    }

    private Running at(double gaugePa, Fleet fleet, Wear wear) {
        double free = fleet.freeAt(gaugePa, wear);
        double watts = fleet.watts(gaugePa, wear);
        boolean inside = fleet.isInside(gaugePa, wear);
        double bled = Math.max(0, free - neededM3PerS);
        return new Running(gaugePa, free, bled, watts, fleet.discharge(gaugePa, wear), inside);
    }
}
