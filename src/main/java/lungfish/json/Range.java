package lungfish.json;

/**
 * The numbers that may stand somewhere. Never NaN, never infinite.
 *
 * @param openBelow the least itself is not allowed
 */
public record Range(double least, double most, boolean openBelow) {
    /** Any finite number. */
    public static final Range ANY = new Range(-Double.MAX_VALUE, Double.MAX_VALUE, false);

    /** Zero or more. */
    public static final Range NOT_NEGATIVE = atLeast(0);

    /** More than zero. */
    public static final Range POSITIVE = above(0);

    /** A share: 0 to 1. */
    public static final Range SHARE = between(0, 1);

    public static Range between(double least, double most) {
        return new Range(least, most, false);
    }

    public static Range atLeast(double least) {
        return new Range(least, Double.MAX_VALUE, false);
    }

    /** More than {@code least}. */
    public static Range above(double least) {
        return new Range(least, Double.MAX_VALUE, true);
    }

    /** More than {@code least}, at most {@code most}. */
    public static Range aboveTo(double least, double most) {
        return new Range(least, most, true);
    }

    public boolean holds(double x) {
        return (openBelow ? x > least : x >= least) && x <= most;
    }

    /** In words that follow "a number" or "a whole number". */
    public String words() {
        boolean floor = least > -Double.MAX_VALUE;
        boolean ceiling = most < Double.MAX_VALUE;
        String from = openBelow ? "above " + NumberText.of(least) : "from " + NumberText.of(least);
        if (floor && ceiling) {
            return " " + from + (openBelow ? " and at most " : " to ") + NumberText.of(most);
        }
        if (floor) {
            return openBelow ? " " + from : " of at least " + NumberText.of(least);
        }
        return ceiling ? " of at most " + NumberText.of(most) : "";
    }
}
