package lungfish.measured;

import java.util.Optional;
import lungfish.room.Reading;

/**
 * One reading, or something that the room says, against one state of the room. All is well where {@code off + slope · unknowns}
 * is within its noise of 0.
 */
final class Row {
    private final Optional<Reading> reading;
    private final double off;
    private final double[] slope;
    private final double variance;
    private final double lnDensity;
    private final int outlet;
    private final double headPa;

    /**
     * With these numbers.
     *
     * @param off how far apart they are where all unknowns are as in that state
     * @param slope how that grows with each unknown; an array of its own
     * @param variance of its noise
     * @param lnDensity natural logarithm of what {@code off} grows by for each unit that was read
     * @param outlet whose jar it is; −1: none
     * @param headPa what that outlet has of pressure above its water
     */
    Row(
            Optional<Reading> reading,
            double off,
            double[] slope,
            double variance,
            double lnDensity,
            int outlet,
            double headPa) {
        this.reading = reading;
        this.off = off;
        this.slope = slope;
        this.variance = variance;
        this.lnDensity = lnDensity;
        this.outlet = outlet;
        this.headPa = headPa;
    }

    Optional<Reading> reading() {
        return reading;
    }

    double off() {
        return off;
    }

    double[] slope() {
        return slope;
    }

    double variance() {
        return variance;
    }

    double lnDensity() {
        return lnDensity;
    }

    int outlet() {
        return outlet;
    }

    double headPa() {
        return headPa;
    }

    static Row of(Reading reading, double off, double[] slope, double variance) {
        return new Row(Optional.of(reading), off, slope, variance, 0, -1, 0);
    }

    /** Of something that the room says. */
    static Row assumed(double off, double[] slope, double variance) {
        return new Row(Optional.empty(), off, slope, variance, 0, -1, 0);
    }

    /** The same, the device of its outlet being another than the room says. */
    Row other() {
        double sd = Doubts.OTHER_HEAD * headPa;
        return new Row(reading, off, slope, variance + sd * sd, lnDensity, outlet, headPa);
    }
}
