package lungfish.measured;

/** What a reading would be if something had happened: normally distributed. */
record Foreseen(double mean, double variance) {
    double density(double at) {
        double off = at - mean;
        return Math.exp(-0.5 * off * off / variance) / Math.sqrt(2 * Math.PI * variance);
    }
}
