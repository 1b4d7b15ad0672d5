package lungfish.air;

/**
 * How a valve's loss grows as it closes: its loss factor over that of the open valve, a function of the opening (0 shut,
 * 1 open). Every curve falls smoothly and strictly as the valve opens, is 1 when open, finite at every opening above 0
 * and infinite when shut.
 */
public sealed interface ValveCurve permits BallCurve, EqualPercentageCurve, LinearCurve {
    /** Quarter-turn ball. */
    ValveCurve BALL = new BallCurve();

    /** Needle or clamp whose flow coefficient is in proportion to its travel. */
    ValveCurve LINEAR = new LinearCurve();

    /**
     * Needle whose flow coefficient grows by the same share with each step of travel.
     *
     * @param rangeability largest over least flow coefficient that can be set, above 1; 50 is usual
     */
    static ValveCurve equalPercentage(double rangeability) {
        return rangeability > Math.E ? new EqualPercentageCurve(rangeability) : LINEAR;
    }

    /**
     * Loss factor over that of the open valve.
     *
     * @param opening 0 to 1
     * @return 1 or more; infinite when shut
     */
    double lossRatio(double opening);

    /**
     * The opening that gives a loss ratio.
     *
     * @param lossRatio a ratio below 1 is more than the open valve can pass
     * @return above 0 to 1; 1 for what the open valve cannot pass, 0 for an infinite ratio
     */
    double opening(double lossRatio);
}
