package lungfish.validation;

import java.util.Locale;

/**
 * How far ours may lie from a published value, and why just so far.
 *
 * @param amount a share (relative), an amount in the row's unit (absolute), or a ratio of 1 or more (factor)
 */
public record Tolerance(Kind kind, double amount, String why) {
    /** How the amount is meant. */
    public enum Kind {
        RELATIVE,
        ABSOLUTE,
        FACTOR
    }

    /** A tolerance of nothing still forgives what a decimal fraction loses in binary. */
    private static final double ROUNDING = 1e-12;

    private static final double MEANT_AS_EQUAL = 1e-8;

    /** How much of the tolerance a difference uses up: 1 is just allowed. */
    public double used(double published, double ours) {
        double off = Math.abs(ours - published);
        return switch (kind) {
            case RELATIVE -> share(off, amount * Math.abs(published));
            case ABSOLUTE -> share(off, amount);
            case FACTOR -> share(Math.abs(Math.log(ours / published)), Math.log(amount));
        };
    }

    /** As a table shows it. */
    public String text(String unit) {
        return switch (kind) {
            case RELATIVE -> amount <= MEANT_AS_EQUAL ? "equal" : "±" + plain(100.0 * amount) + " %";
            case ABSOLUTE -> amount <= MEANT_AS_EQUAL ? "equal" : ("±" + plain(amount) + " " + unit).strip();
            case FACTOR -> "× or ÷ " + plain(amount);
        };
    }

    private static double share(double off, double allowed) {
        return off <= ROUNDING ? 0.0 : off / Math.max(allowed, ROUNDING);
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.4g", value)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
