package lungfish.backup;

import lungfish.catalogue.BatteryClass.Chemistry;

/**
 * Filling batteries again once the mains are back.
 *
 * <p>Up to a knee the charger gives all its power. Above it lead-acid takes less and less (the absorption stage): the last
 * fifth of its rated charge takes {@value #TAIL_H} hours at least, whatever the charger could give. Of several kinds side
 * by side the slowest speaks for all: that is the cautious side.
 *
 * @param knee share of what may be drawn, from which the tail begins; 1 where there is none
 * @param bulkPerS share gained in a second below the knee
 * @param tailPerS share gained in a second above it
 */
record Charging(double knee, double bulkPerS, double tailPerS) {
    /** Of the rated charge: common practice, no source. */
    private static final double TAIL_SHARE = 0.2;

    /** Common practice (2 to 4 hours), no source; the long end is the cautious one. */
    private static final double TAIL_H = 4;

    private static final double HOUR_S = 3600;

    /** A charger of a power, for batteries of which so much may be drawn. */
    static Charging of(Bank bank, double chargerW, double usableJ) {
        double efficiency =
                bank.each(store -> efficiency(store.kind().chemistry())).min().orElseThrow();
        double tail = bank.each(Charging::tail).max().orElseThrow();
        double bulkPerS = efficiency * chargerW / usableJ;
        return new Charging(1 - tail, bulkPerS, Math.min(bulkPerS, tail == 0 ? bulkPerS : tail / (TAIL_H * HOUR_S)));
    }

    /** From empty to full, s. */
    double fromEmptyS() {
        return knee / bulkPerS + (1 - knee) / tailPerS;
    }

    /** How long the tail takes where it is slower than the charger could be; else 0, s. */
    double slowEndS() {
        return tailPerS < bulkPerS ? (1 - knee) / tailPerS : 0;
    }

    /** Share of the energy given that comes out again: from memory, no source. */
    private static double efficiency(Chemistry chemistry) {
        return switch (chemistry) {
            case LEAD_ACID_FLOODED, LEAD_ACID_SEALED -> 0.85;
            case LITHIUM_IRON_PHOSPHATE -> 0.95;
        };
    }

    private static double tail(Store store) {
        return switch (store.kind().chemistry()) {
            case LEAD_ACID_FLOODED, LEAD_ACID_SEALED ->
                Math.min(1, TAIL_SHARE / store.kind().usableShare());
            case LITHIUM_IRON_PHOSPHATE -> 0;
        };
    }
}
