package lungfish.air;

/** Oxygen that fish and the bacteria that live on their waste take up. */
public final class Respiration {
    /**
     * The cautious figure over the likely one: two standard deviations of the fit's factor of 1.8. The relation of A.
     * Clarke and N. M. Johnston, Journal of Animal Ecology 68 (1999), pp. 893–905, 0.449 M^0.80 mg/h at 25 °C, is about one.
     */
    public static final double CAUTIOUS_FACTOR = 3.0;

    /** Most that a large meal multiplies: 1.2 to 2.2 published (Fu et al. 2005, catfish). */
    public static final double FED_FACTOR = 2.2;

    /** Oxygen to turn ammonia nitrogen into nitrate, g/g: 2 O2 for each N. */
    public static final double OXYGEN_PER_AMMONIA_NITROGEN = 4.57;

    /** Ammonia nitrogen from the protein of the feed (Timmons and Ebeling, Recirculating Aquaculture). */
    public static final double NITROGEN_PER_PROTEIN = 0.092;

    /** Other bacteria and sediment over the fish's own use: common practice, no source. */
    public static final double SEDIMENT_SHARE = 0.5;

    private static final double LIKELY_MG_PER_H = 0.25;
    private static final double MASS_EXPONENT = 0.80;
    private static final double PER_TEN_KELVIN = 1.83;
    private static final double REFERENCE_K = Air.ZERO_CELSIUS_K + 25.0;
    private static final double KG_PER_S_OF_MG_PER_H = 1e-6 / 3600.0;

    private Respiration() {}

    /**
     * Likely use of one resting fish: {@code 0.25 M^0.80 · 1.83^((T−25)/10)} mg/h, M in g. Fitted to 162 published rows
     * for fresh-water fish at 20 °C and above (median; one standard deviation is a factor of 1.8).
     *
     * @return kg/s
     */
    public static double likelyKgPerS(double fishKg, double waterK) {
        double warmer = Math.pow(PER_TEN_KELVIN, (waterK - REFERENCE_K) / 10.0);
        return LIKELY_MG_PER_H * Math.pow(1000.0 * fishKg, MASS_EXPONENT) * warmer * KG_PER_S_OF_MG_PER_H;
    }

    /** Three times the likely one, kg/s. */
    public static double cautiousKgPerS(double fishKg, double waterK) {
        return CAUTIOUS_FACTOR * likelyKgPerS(fishKg, waterK);
    }

    /** Oxygen that turns the ammonia of a feed into nitrate, of the unit of the feed: kg/s of kg/s. */
    public static double nitrificationKgPerS(double feedKgPerS, double proteinShare) {
        return OXYGEN_PER_AMMONIA_NITROGEN * ammoniaNitrogenKgPerS(feedKgPerS, proteinShare);
    }

    /** Ammonia nitrogen from a feed, of the unit of the feed. */
    public static double ammoniaNitrogenKgPerS(double feedKgPerS, double proteinShare) {
        return NITROGEN_PER_PROTEIN * feedKgPerS * proteinShare;
    }
}
