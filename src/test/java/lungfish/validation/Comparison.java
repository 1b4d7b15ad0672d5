package lungfish.validation;

/** A published value and ours, in the same unit. */
record Comparison(PublishedRow row, double ours) {
    double toleranceUsed() {
        return row.tolerance().used(row.published(), ours);
    }

    /** A figure that is not a number is never within. */
    boolean within() {
        return toleranceUsed() <= 1.0;
    }
}
