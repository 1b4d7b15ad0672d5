package lungfish.build;

import java.util.ArrayList;
import java.util.List;

/**
 * Things packed into bins of one size. First fit and best fit decreasing, then bins filled one by one with the least slack
 * (Gupta and Ho, A new heuristic algorithm for the one-dimensional bin-packing problem, 1999), then branch and bound; each only
 * until the lower bound L2 is reached (Martello and Toth, Knapsack Problems, 1990, section 8.3).
 *
 * @param bins positions of the things, in their order
 * @param least the lower bound L2, or the number of bins where the search found nothing better
 * @param proved whether no packing has fewer bins
 */
record Packing(List<List<Integer>> bins, int least, boolean proved) {
    /** Steps of the search for fewer bins: a part of a second. */
    private static final int MOST_STEPS = 100_000;

    /** Steps of the search for the fullest bin. */
    private static final int MOST_STEPS_A_BIN = 5_000;

    /**
     * Packs.
     *
     * @param sizes largest first, none larger than a bin
     */
    static Packing of(int[] sizes, int bin) {
        int bound = bound(sizes, bin);
        List<List<Integer>> best = fit(sizes, bin, false);
        best = fewer(best, bound, () -> fit(sizes, bin, true));
        best = fewer(best, bound, () -> leastSlack(sizes, bin));
        if (best.size() == bound) {
            return new Packing(best, bound, true);
        }
        BranchAndBound search = new BranchAndBound(sizes, bin, best, bound, MOST_STEPS);
        search.run();
        boolean proved = search.isExhausted() || search.best().size() == bound;
        return new Packing(search.best(), proved ? search.best().size() : bound, proved);
    }

    private interface Way {
        List<List<Integer>> packed();
    }

    private static List<List<Integer>> fewer(List<List<Integer>> best, int bound, Way way) {
        if (best.size() == bound) {
            return best;
        }
        List<List<Integer>> other = way.packed();
        return other.size() < best.size() ? other : best;
    }

    /** First fit or best fit, in the order given. */
    static List<List<Integer>> fit(int[] sizes, int bin, boolean tightest) {
        List<List<Integer>> bins = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            int into = place(left, sizes[i], tightest);
            if (into == left.size()) {
                bins.add(new ArrayList<>());
                left.add(bin);
            }
            bins.get(into).add(i);
            left.set(into, left.get(into) - sizes[i]);
        }
        return bins;
    }

    private static int place(List<Integer> left, int size, boolean tightest) {
        int into = left.size();
        for (int b = 0; b < left.size(); b++) {
            boolean better = into == left.size() || (tightest && left.get(b) < left.get(into));
            if (left.get(b) >= size && better) {
                into = b;
            }
        }
        return into;
    }

    private static List<List<Integer>> leastSlack(int[] sizes, int bin) {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            open.add(i);
        }
        List<List<Integer>> bins = new ArrayList<>();
        while (!open.isEmpty()) {
            List<Integer> fullest = new FullestBin(sizes, bin, open, MOST_STEPS_A_BIN).found();
            bins.add(fullest);
            open.removeAll(fullest);
        }
        return bins;
    }

    /** L2: no packing has fewer bins. */
    static int bound(int[] sizes, int bin) {
        int most = bound(sizes, bin, 0);
        for (int size : sizes) {
            most = 2L * size <= bin ? Math.max(most, bound(sizes, bin, size)) : most;
        }
        return most;
    }

    /** The bound where things below {@code small} are left out: those too large for it, those above half, and the rest. */
    private static int bound(int[] sizes, int bin, int small) {
        int large = 0;
        int halves = 0;
        long halfSum = 0;
        long rest = 0;
        for (int size : sizes) {
            if (size > bin - small) {
                large++;
            } else if (2L * size > bin) {
                halves++;
                halfSum += size;
            } else if (size >= small) {
                rest += size;
            }
        }
        long over = rest - ((long) halves * bin - halfSum);
        return large + halves + (int) Math.max(0, (over + bin - 1) / bin);
    }
}
