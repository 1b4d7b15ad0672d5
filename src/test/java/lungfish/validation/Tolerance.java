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
            case RELATIVE -> amount == 0.0 ? "equal" : "±" + plain(100.0 * amount) + " %";
            case ABSOLUTE -> amount == 0.0 ? "equal" : ("±" + plain(amount) + " " + unit).strip();
            case FACTOR -> "× or ÷ " + plain(amount);
        };
    }

    /** A tolerance of nothing still forgives what a decimal fraction loses in binary. */
    private static double share(double off, double allowed) {
        return off <= 1e-12 ? 0.0 : off / Math.max(allowed, 1e-12);
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.4g", value)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
