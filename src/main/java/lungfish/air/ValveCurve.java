package lungfish.air;

/**
 * How a valve's loss grows as it closes: its loss factor over that of the open valve, a function of the opening (0 shut,
 * 1 open). Every curve falls smoothly and strictly as the valve opens, is 1 when open, finite at every opening above 0
 * and infinite when shut.
 */
public enum ValveCurve {
    /**
     * Ball valve: loss factors 0.05 open, 5.5 one third closed, 210 two thirds closed (Munson, Young and Okiishi,
     * Fundamentals of Fluid Mechanics, Table 8.2). Between them the parabola of ln K through the three; nearer to shut
     * the power of the opening that leaves it without a corner.
     */
    BALL {
        @Override
        public double lossRatio(double opening) {
            if (opening < Ball.LAST_POINT) {
                return Ball.LAST_RATIO * Math.pow(Ball.LAST_POINT / opening, Ball.SHUT_POWER);
            }
            double closed = 1.0 - opening;
            return Math.exp(closed * (Ball.FIRST + closed * Ball.SECOND));
        }

        @Override
        public double opening(double lossRatio) {
            if (lossRatio > Ball.LAST_RATIO) {
                return Ball.LAST_POINT * Math.pow(Ball.LAST_RATIO / lossRatio, 1.0 / Ball.SHUT_POWER);
            }
            double log = Math.log(Math.max(lossRatio, 1.0));
            // the root of SECOND c² + FIRST c = log that is 0 at log 0, in the form that does not cancel
            double root = Math.sqrt(Ball.FIRST * Ball.FIRST + 4.0 * Ball.SECOND * log);
            return 1.0 - 2.0 * log / (Ball.FIRST + root);
        }
    },

    /** Needle valve with the ideal linear inherent characteristic, flow coefficient in proportion to travel: IEC 60534-2-4. */
    LINEAR {
        @Override
        public double lossRatio(double opening) {
            return 1.0 / (opening * opening);
        }

        @Override
        public double opening(double lossRatio) {
            return 1.0 / Math.sqrt(Math.max(lossRatio, 1.0));
        }
    },

    /**
     * Needle valve with the ideal equal-percentage inherent characteristic, flow coefficient {@code 50^(h−1)} of the
     * open one at travel h (IEC 60534-2-4; rangeability 50 is its usual value, from memory). The ideal one would still
     * leak 2 % when shut, so below h = 1/ln 50 the tangent through the shut point takes over.
     */
    EQUAL_PERCENTAGE {
        @Override
        public double lossRatio(double opening) {
            double flow = opening < EqualPercentage.TANGENT_AT
                    ? EqualPercentage.TANGENT_FLOW * opening / EqualPercentage.TANGENT_AT
                    : Math.exp(EqualPercentage.LOG_RANGE * (opening - 1.0));
            return 1.0 / (flow * flow);
        }

        @Override
        public double opening(double lossRatio) {
            double flow = 1.0 / Math.sqrt(Math.max(lossRatio, 1.0));
            return flow < EqualPercentage.TANGENT_FLOW
                    ? EqualPercentage.TANGENT_AT * flow / EqualPercentage.TANGENT_FLOW
                    : 1.0 + Math.log(flow) / EqualPercentage.LOG_RANGE;
        }
    };

    /**
     * Loss factor over that of the open valve.
     *
     * @param opening 0 to 1
     * @return 1 or more; infinite when shut
     */
    public abstract double lossRatio(double opening);

    /**
     * The opening that gives a loss ratio.
     *
     * @param lossRatio a ratio below 1 is more than the open valve can pass
     * @return above 0 to 1; 1 for what the open valve cannot pass, 0 for an infinite ratio
     */
    public abstract double opening(double lossRatio);

    /** ln(K/K_open) = FIRST c + SECOND c² with c the closed part, through the two published ratios at 1/3 and 2/3. */
    private static final class Ball {
        static final double LAST_POINT = 1.0 / 3.0;
        static final double LAST_RATIO = 210.0 / 0.05;
        static final double AT_ONE_THIRD = Math.log(5.5 / 0.05);
        static final double AT_TWO_THIRDS = Math.log(LAST_RATIO);
        static final double FIRST = 6.0 * AT_ONE_THIRD - 1.5 * AT_TWO_THIRDS;
        static final double SECOND = 4.5 * AT_TWO_THIRDS - 9.0 * AT_ONE_THIRD;
        static final double SHUT_POWER = LAST_POINT * (FIRST + 2.0 * (1.0 - LAST_POINT) * SECOND);
    }

    private static final class EqualPercentage {
        static final double LOG_RANGE = Math.log(50.0);
        static final double TANGENT_AT = 1.0 / LOG_RANGE;
        static final double TANGENT_FLOW = Math.exp(1.0 - LOG_RANGE);
    }
}
