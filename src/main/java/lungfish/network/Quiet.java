package lungfish.network;

import java.util.Arrays;

/**
 * Which blocks need no new tangents: those in which no flow has moved since they were set by more than leaves every law
 * on its tangent.
 *
 * <p>A law h leaves its tangent by {@code h″ Δ²/2} and by a third term that is smaller by {@code δ = Δ/ṁ} times what the
 * law bends by: at most 36 where Churchill's friction leaves the laminar line, for there f·Re rises with a term that
 * goes as Re³⁶. With δ at most 1e-5 that third term is below 1e-13 of the element's own flow, whatever the second; the
 * second is counted. The square root of a miss grows with Δ, so roots of several steps add up.
 */
final class Quiet {
    private static final double MOST_SHARE = 1e-5;

    private final double[] root;
    private final boolean[] kept;
    private final boolean[] touched;

    Quiet(int blocks) {
        root = new double[blocks];
        kept = new boolean[blocks];
        touched = new boolean[blocks];
        stirAll();
    }

    /** All blocks need new tangents. */
    void stirAll() {
        Arrays.fill(root, Double.POSITIVE_INFINITY);
    }

    /** A block needs new tangents. */
    void stir(int block) {
        root[block] = Double.POSITIVE_INFINITY;
    }

    /** One tangent of a block is another; it must be eliminated anew, the others as they were. */
    void touch(int block) {
        touched[block] = true;
    }

    boolean isTouched(int block) {
        return touched[block];
    }

    boolean isQuiet(int block) {
        return root[block] <= 1.0;
    }

    /** A block gets new tangents. */
    void renewed(int block) {
        root[block] = 0.0;
        eliminated(block);
    }

    /** A block is eliminated anew. */
    void eliminated(int block) {
        kept[block] = false;
        touched[block] = false;
    }

    /** A block keeps its tangents. */
    void keep(int block) {
        kept[block] = true;
    }

    /** Whether a block kept its tangents for the present step. */
    boolean isKept(int block) {
        return kept[block];
    }

    /** A block has taken a whole step. */
    void moved(int block, Moved moved, Misses misses, double pi) {
        double bent = misses.ofTangent(moved.missedPsi(), moved.missedKgPerS(), pi);
        root[block] += Math.max(Math.sqrt(bent), moved.share() / MOST_SHARE);
        if (moved.isBounded()) {
            stir(block);
        }
    }
}
