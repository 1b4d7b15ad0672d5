package lungfish.measured;

import lungfish.room.Reading;

/**
 * What a fall of the gauge tells of leaks, with {@code q = V p ln(p1/p2)/(p0 t)} as
 * {@link lungfish.commissioning.LeakTest#leakM3PerS}, as a share of the air that the outlets took when their valves were set.
 *
 * @param variance from a gauge that is off by its own amount at each look
 */
record Fallen(double share, double variance) {
    /** Nobody watches a gauge for longer: common practice, no source. */
    private static final double LONGEST_S = 60;

    static Fallen of(Start start, double volumeM3, Reading.Fall fall) {
        double to = Math.max(fall.toPa(), Doubts.GAUGE_PA);
        double from = Math.max(fall.fromPa(), to);
        double perLog = perLog(start, volumeM3, fall.s());
        double noise = square(Doubts.GAUGE_PA / from) + square(Doubts.GAUGE_PA / to);
        double share = perLog * Math.log(from / to);
        return new Fallen(share, square(perLog) * noise + square(share * Doubts.WATCH_S / fall.s()));
    }

    /**
     * The variance that a fall would have of which nobody knows yet how long it takes: watched until half is left.
     *
     * @param share that leaks
     */
    static double varianceOf(Start start, double volumeM3, double share) {
        double s = Math.min(
                LONGEST_S, Math.max(Doubts.WATCH_S, perLog(start, volumeM3, 1) * Math.log(2) / Math.max(1e-6, share)));
        double to = start.gaugePa() * Math.exp(-share / perLog(start, volumeM3, s));
        return of(start, volumeM3, new Reading.Fall(start.gaugePa(), to, s)).variance();
    }

    /** Share of the air for each unit of the logarithm of the fall. */
    static double perLog(Start start, double volumeM3, double s) {
        return volumeM3 * start.gaugePa() / (start.conditions().ambientPa() * s * start.takesM3PerS());
    }

    private static double square(double x) {
        return x * x;
    }
}
