package lungfish.edit;

import lungfish.quantity.Dimension;
import lungfish.reason.Amount;

/** From one number to another, in SI. */
record Limits(double leastSi, double mostSi, boolean isLeastIn) {
    static final Limits SHARE = from(0, 1);

    static Limits from(double leastSi, double mostSi) {
        return new Limits(leastSi, mostSi, true);
    }

    static Limits above(double leastSi, double mostSi) {
        return new Limits(leastSi, mostSi, false);
    }

    boolean hold(double si) {
        return (isLeastIn ? si >= leastSi : si > leastSi) && si <= mostSi;
    }

    /** What is said of a number beyond them that may also be left out. */
    Refused refused(String label, double si, Dimension dimension) {
        return refused(label, si, dimension, "; leave it empty if you do not know it.");
    }

    /** The same of a number that must be said. */
    Refused refusedAsNeeded(String label, double si, Dimension dimension) {
        return refused(label, si, dimension, ".");
    }

    private Refused refused(String label, double si, Dimension dimension, String ending) {
        return Refused.because(
                label + " cannot be {found}.",
                (isLeastIn ? "It must be from {least} to {most}" : "It must be above {least}, and at most {most}")
                        + ending,
                new Amount("found", si, dimension),
                new Amount("least", leastSi, dimension),
                new Amount("most", mostSi, dimension));
    }
}
