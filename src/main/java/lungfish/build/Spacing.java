package lungfish.build;

import java.util.Arrays;

/**
 * Places along a line, moved as little as can be so that each keeps its distance from the one before: least squares, by
 * pooling neighbours that meet (Barlow and others, Statistical Inference under Order Restrictions, 1972).
 */
final class Spacing {
    private Spacing() {}

    /**
     * Where the places go.
     *
     * @param wanted rising
     * @param gaps least distance of each place from the one before; the first is not looked at
     * @param weights how much a place holds on to where it is
     * @param least the first goes no lower
     * @param most the last goes no higher; where all do not fit between, both limits are left out
     */
    static double[] spread(double[] wanted, double[] gaps, double[] weights, double least, double most) {
        int n = wanted.length;
        double[] offset = new double[n];
        for (int i = 1; i < n; i++) {
            offset[i] = offset[i - 1] + gaps[i];
        }
        double[] level = new double[n];
        Arrays.setAll(level, i -> wanted[i] - offset[i]);
        pool(level, weights);
        double top = n == 0 ? most : most - offset[n - 1];
        boolean fits = least <= top;
        double[] places = new double[n];
        Arrays.setAll(places, i -> (fits ? Math.min(top, Math.max(least, level[i])) : level[i]) + offset[i]);
        return places;
    }

    /** Makes the levels rise: those that fall are put at their common mean, until none does. */
    private static void pool(double[] level, double[] weights) {
        int[] first = new int[level.length];
        double[] weight = weights.clone();
        for (int i = 0; i < level.length; i++) {
            first[i] = i;
            while (first[i] > 0 && level[first[i] - 1] > level[i]) {
                int before = first[i] - 1;
                double both = weight[before] + weight[i];
                double mean = (level[before] * weight[before] + level[i] * weight[i]) / both;
                first[i] = first[before];
                Arrays.fill(level, first[i], i + 1, mean);
                weight[i] = both;
            }
        }
    }
}
