package lungfish.desktop;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Times of one thing that is done again and again. */
final class Times {
    private static final double[] SHARES = {0.5, 0.9, 0.99, 0.999, 1};
    private static final double NS_PER_MS = 1e6;
    private static final int WIDEST_BAR = 60;

    private final String what;
    private long[] ns = new long[1024];
    private int count;

    Times(String what) {
        this.what = what;
    }

    synchronized void add(long oneNs) {
        if (count == ns.length) {
            ns = Arrays.copyOf(ns, 2 * count);
        }
        ns[count++] = oneNs;
    }

    synchronized void forget() {
        count = 0;
    }

    private double[] sortedMs() {
        return Arrays.stream(ns, 0, count)
                .sorted()
                .mapToDouble(one -> one / NS_PER_MS)
                .toArray();
    }

    /** The least time that this share of all does not exceed (nearest rank). */
    private static double atMost(double share, double[] sorted) {
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }

    /** A table in the form of the documents, in ms. */
    static String table(List<Times> all) {
        return "| ms | steps | 50 % | 90 % | 99 % | 99.9 % | most |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n"
                + all.stream().map(Times::row).collect(joining("\n"));
    }

    private String row() {
        double[] sorted = sortedMs();
        String figures = Arrays.stream(SHARES)
                .mapToObj(share -> String.format(Locale.ROOT, "%.1f", atMost(share, sorted)))
                .collect(joining(" | "));
        return "| " + what + " | " + sorted.length + " | " + figures + " |";
    }

    /** How many steps took how many whole milliseconds, as bars; each step counts, so that the rare ones are seen. */
    String histogram() {
        double[] sorted = sortedMs();
        int last = (int) sorted[sorted.length - 1];
        int[] counts = new int[last + 1];
        Arrays.stream(sorted).forEach(ms -> counts[(int) ms]++);
        int most = Arrays.stream(counts).max().orElse(1);
        StringBuilder text = new StringBuilder();
        for (int ms = (int) sorted[0]; ms <= last; ms++) {
            if (counts[ms] > 0) {
                String bar = "#".repeat((int) Math.ceil((double) WIDEST_BAR * counts[ms] / most));
                text.append(String.format(Locale.ROOT, "%3d to %3d ms %6d %s%n", ms, ms + 1, counts[ms], bar));
            }
        }
        return text.toString();
    }
}
