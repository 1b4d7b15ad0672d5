package lungfish.network;

import java.util.Arrays;

/**
 * Which blocks need no new tangents: those in which no flow has moved since they were set by more than leaves every law
 * on its tangent ({@link Moved}). What a law misses grows with the square of the change, so the roots of several steps
 * add up.
 */
final class Quiet {
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
        root[block] += Math.sqrt(misses.ofTangent(moved.missedPsi(), moved.missedKgPerS(), pi));
        if (moved.isFar()) {
            stir(block);
        }
    }
}
