package lungfish.sizing;

import lungfish.quantity.Dimension;

/** The limits that a blower, or a growing room, may break. */
public enum Limit {
    FLOW(Dimension.AIR_FLOW),
    PRESSURE(Dimension.PRESSURE),
    RATING(Dimension.PRESSURE),
    RESERVE(Dimension.SHARE),
    LEAST_FLOW(Dimension.AIR_FLOW),
    HEAT(Dimension.TEMPERATURE),
    NOISE(Dimension.SOUND_LEVEL),
    MAINS(Dimension.VOLTAGE),
    RUNTIME(Dimension.DURATION);

    private final Dimension dimension;

    Limit(Dimension dimension) {
        this.dimension = dimension;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** This limit broken: what was found against what is allowed or asked. */
    public Broken broken(double foundSi, double allowedSi) {
        return new Broken(this, foundSi, allowedSi);
    }

    /** A limit and by how much it is broken. */
    public record Broken(Limit limit, double foundSi, double allowedSi) {
        /** How far beyond, in the limit's own unit, never negative. */
        public double bySi() {
            return Math.abs(foundSi - allowedSi);
        }
    }
}
