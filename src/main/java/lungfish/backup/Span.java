package lungfish.backup;

/**
 * A stretch of time in which the batteries do one thing.
 *
 * @param forS how long, s, 0 or more
 * @param doing what
 * @param watts what hangs on the inverter while they carry, 0 or more (0: the inverter idles); 0 else
 */
public record Span(double forS, Doing doing, double watts) {
    /** What batteries do. */
    public enum Doing {
        /** They carry a load through the inverter. */
        CARRYING,
        /** The inverter is off, and so is the charger. */
        RESTING,
        /** The mains are on: the charger fills them. */
        CHARGING
    }

    public Span {
        if (!(forS >= 0) || !(watts >= 0)) {
            throw new IllegalArgumentException("a span takes 0 s or more, and a load is 0 W or more");
        }
    }

    /** They carry this load. */
    public static Span carrying(double forS, double watts) {
        return new Span(forS, Doing.CARRYING, watts);
    }

    /** Nothing is drawn from them, and nothing given. */
    public static Span resting(double forS) {
        return new Span(forS, Doing.RESTING, 0);
    }

    /** The charger fills them. */
    public static Span charging(double forS) {
        return new Span(forS, Doing.CHARGING, 0);
    }
}
