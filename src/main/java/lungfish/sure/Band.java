package lungfish.sure;

import java.util.Arrays;

/**
 * Where eight of ten lie.
 *
 * @param lowSi one of ten lies below
 * @param medianSi as many lie below as above
 * @param highSi one of ten lies above
 * @param plannedSi the plan's figure, with nothing off
 */
public record Band(double lowSi, double medianSi, double highSi, double plannedSi) {
    /** Of these numbers, which are taken as they are. */
    static Band of(double[] samples, double planned) {
        double[] sorted = samples.clone();
        Arrays.sort(sorted);
        return new Band(quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9), planned);
    }

    /**
     * Whether the plan's figure lies below most of what was found: nearer the lower end than the middle, where about one in
     * four lies.
     */
    public boolean isPlannedLow() {
        return plannedSi < (lowSi + medianSi) / 2;
    }

    /** Straight between neighbours: definition 7 of R. J. Hyndman and Y. Fan, The American Statistician 50(4), 1996, p. 361. */
    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
