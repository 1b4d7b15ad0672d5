package lungfish.build;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for a packing with fewer bins, the largest thing first, depth first. A branch is left when what is left to pack cannot
 * fit into fewer bins than the best packing has. Where a thing fills a bin to the brim it goes there and nowhere else: whatever
 * else that bin could take would fit where the thing went instead.
 */
final class BranchAndBound {
    private final int[] sizes;
    private final int bin;
    private final int bound;
    private final long[] after;
    private final int[] into;
    private final List<Integer> left = new ArrayList<>();
    private List<List<Integer>> best;
    private int steps;

    BranchAndBound(int[] sizes, int bin, List<List<Integer>> best, int bound, int mostSteps) {
        this.sizes = sizes;
        this.bin = bin;
        this.best = best;
        this.bound = bound;
        this.steps = mostSteps;
        this.into = new int[sizes.length];
        this.after = new long[sizes.length + 1];
        for (int i = sizes.length - 1; i >= 0; i--) {
            after[i] = after[i + 1] + sizes[i];
        }
    }

    void run() {
        pack(0);
    }

    /** Whether nothing was left unlooked at, so that no packing is better than the best. */
    boolean isExhausted() {
        return steps > 0;
    }

    List<List<Integer>> best() {
        return best;
    }

    private void pack(int thing) {
        if (thing == sizes.length) {
            keep();
            return;
        }
        if (steps <= 0 || best.size() == bound || least(thing) >= best.size()) {
            return;
        }
        steps--;
        int brim = left.indexOf(sizes[thing]);
        if (brim >= 0) {
            put(thing, brim);
            return;
        }
        for (int b = 0; b < left.size(); b++) {
            if (left.get(b) > sizes[thing] && left.indexOf(left.get(b)) == b) {
                put(thing, b);
            }
        }
        left.add(bin);
        put(thing, left.size() - 1);
        left.remove(left.size() - 1);
    }

    private void put(int thing, int b) {
        into[thing] = b;
        left.set(b, left.get(b) - sizes[thing]);
        pack(thing + 1);
        left.set(b, left.get(b) + sizes[thing]);
    }

    /** Bins that are open, and those that what is left needs beyond the room in them. */
    private int least(int thing) {
        int smallest = sizes[sizes.length - 1];
        long free = 0;
        for (int each : left) {
            free += each >= smallest ? each : 0;
        }
        long over = after[thing] - free;
        return left.size() + (int) Math.max(0, (over + bin - 1) / bin);
    }

    private void keep() {
        if (left.size() < best.size()) {
            List<List<Integer>> bins = new ArrayList<>();
            left.forEach(each -> bins.add(new ArrayList<>()));
            for (int i = 0; i < into.length; i++) {
                bins.get(into[i]).add(i);
            }
            best = bins;
        }
    }
}
