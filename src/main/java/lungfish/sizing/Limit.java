package lungfish.sizing;

import lungfish.quantity.Dimension;

/** The limits that a blower, or a growing room, may break. */
public enum Limit {
    MAINS(Dimension.VOLTAGE, false),
    PRESSURE(Dimension.PRESSURE, false),
    FLOW(Dimension.AIR_FLOW, false),
    RATING(Dimension.PRESSURE, false),
    LEAST_FLOW(Dimension.AIR_FLOW, false),
    HEAT(Dimension.TEMPERATURE, false),
    RESERVE(Dimension.SHARE, true),
    NOISE(Dimension.SOUND_LEVEL, true),
    RUNTIME(Dimension.DURATION, true),
    SPARE(Dimension.PRESSURE, true),
    SPEED(Dimension.SPEED, false);

    private final Dimension dimension;
    private final boolean wish;

    Limit(Dimension dimension, boolean wish) {
        this.dimension = dimension;
        this.wish = wish;
    }

    /** Whether the room runs all the same when it is broken: a wish of the keeper's, not a limit of the machine. */
    public boolean isWish() {
        return wish;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As the part of a sentence that ends something: {@code "the blower's air"}. */
    public String words() {
        return switch (this) {
            case FLOW -> "the blower's air";
            case PRESSURE -> "the blower's pressure";
            case RATING -> "its continuous rating";
            case RESERVE -> "the wished reserve";
            case LEAST_FLOW -> "its least flow";
            case HEAT -> "the heat of the air";
            case NOISE -> "the noise";
            case MAINS -> "the mains";
            case RUNTIME -> "the battery";
            case SPARE -> "the spare at the worst-served outlet";
            case SPEED -> "the speed of the air in the pipe";
        };
    }

    /** This limit broken: what was found against what is allowed or asked. */
    public Broken broken(double foundSi, double allowedSi) {
        return new Broken(this, foundSi, allowedSi);
    }

    /** A limit and by how much it is broken. */
    public record Broken(Limit limit, double foundSi, double allowedSi) {
        /** How far beyond, as a share of what is allowed or asked. */
        public double share() {
            return allowedSi == 0 ? bySi() : bySi() / Math.abs(allowedSi);
        }

        /** How far beyond, in the limit's own unit, never negative. */
        public double bySi() {
            return Math.abs(foundSi - allowedSi);
        }
    }
}
