package lungfish.air;

/**
 * Ball valve: loss factors 0.05 open, 5.5 one third closed, 210 two thirds closed (Munson, Young and Okiishi,
 * Fundamentals of Fluid Mechanics, Table 8.2). Between them the parabola {@code ln(K/K_open) = FIRST c + SECOND c²}
 * through the three, c the closed part; nearer to shut the power of the opening that leaves it without a corner.
 */
record BallCurve() implements ValveCurve {
    private static final double LAST_POINT = 1.0 / 3.0;
    private static final double LAST_RATIO = 210.0 / 0.05;
    private static final double AT_ONE_THIRD = Math.log(5.5 / 0.05);
    private static final double AT_TWO_THIRDS = Math.log(LAST_RATIO);
    private static final double FIRST = 6.0 * AT_ONE_THIRD - 1.5 * AT_TWO_THIRDS;
    private static final double SECOND = 4.5 * AT_TWO_THIRDS - 9.0 * AT_ONE_THIRD;
    private static final double SHUT_POWER = LAST_POINT * (FIRST + 2.0 * (1.0 - LAST_POINT) * SECOND);

    @Override
    public double lossRatio(double opening) {
        if (opening < LAST_POINT) {
            return LAST_RATIO * Math.pow(LAST_POINT / opening, SHUT_POWER);
        }
        double closed = 1.0 - opening;
        return Math.exp(closed * (FIRST + closed * SECOND));
    }

    @Override
    public double opening(double lossRatio) {
        if (lossRatio > LAST_RATIO) {
            return LAST_POINT * Math.pow(LAST_RATIO / lossRatio, 1.0 / SHUT_POWER);
        }
        double log = Math.log(Math.max(lossRatio, 1.0));
        // the root of SECOND c² + FIRST c = log that is 0 at log 0, in the form that does not cancel
        double root = Math.sqrt(FIRST * FIRST + 4.0 * SECOND * log);
        return 1.0 - 2.0 * log / (FIRST + root);
    }
}
