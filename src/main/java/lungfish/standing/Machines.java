package lungfish.standing;

/**
 * Share of time without air, by the failures of machines alone.
 *
 * @param shortShare not all the air
 * @param airlessShare not even half of it
 */
record Machines(double shortShare, double airlessShare) {
    /** A standby is run once a month, so that it does not lie dead unseen: common practice, no source. */
    static final double TRIED_S = 30 * 24 * 3600.0;

    /** One for all: exact. */
    static Machines one(Rates rates) {
        double down = 1 - Availability.of(rates.mtbfS(), rates.backS());
        return new Machines(down, down);
    }

    /**
     * Machines that share the load, with a standby: the time until it runs, at each failure, {@code n λ s}; and the time in
     * which it is down too, {@code n λ r · λ (r + T/2)}, or another one of them. As a rare-event sum, and with a standby
     * that ages while it waits as if it ran and is found dead only when it is tried, that is the cautious side. It is never
     * told worse than without the standby.
     *
     * @param startS from a failure until it runs
     * @param backS from a failure until the machine is replaced
     */
    static Machines withStandby(int running, Rates rates, double startS, double backS) {
        double rate = rates.ratePerS();
        double standbyDown = rate * (backS + TRIED_S / 2);
        double anotherDown = (running - 1) * rate * backS;
        double down = running * rate * (startS + backS * (standbyDown + anotherDown));
        Machines alone = running == 1 ? one(rates) : sharing(running, rates);
        return new Machines(
                Math.min(alone.shortShare, down),
                running == 1 ? Math.min(alone.airlessShare, down) : alone.airlessShare);
    }

    /**
     * Several that share the load: all of them for all the air, half of them for half. Where two of them do, by
     * {@link Parallel}, else as k of n.
     */
    static Machines sharing(int running, Rates rates) {
        double backS = rates.quietBackS();
        double each = Availability.of(rates.mtbfS(), backS);
        double rate = rates.ratePerS();
        double airless = running == 2
                ? Parallel.of(rate, backS, rate, backS).downShare()
                : 1 - Availability.kOutOfN((running + 1) / 2, running, each);
        return new Machines(1 - Availability.kOutOfN(running, running, each), airless);
    }
}
