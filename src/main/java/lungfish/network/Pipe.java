package lungfish.network;

/**
 * A length of pipe between two nodes, with its fittings. Zero length without fittings ties its nodes into one pressure.
 *
 * @param id unique among the pipes
 * @param from node where a positive flow enters
 * @param to node where a positive flow leaves
 * @param lengthM 0 or more
 * @param boreM inside diameter, above 0
 * @param roughnessM height of the wall's roughness, 0 or more, below half the bore
 * @param kSum sum of the loss factors of its fittings, on its own bore
 */
public record Pipe(String id, String from, String to, double lengthM, double boreM, double roughnessM, double kSum) {
    /** Checks the numbers. */
    public Pipe {
        Tubing.check(lengthM, boreM, roughnessM, kSum);
    }

    /** Whether it has no resistance at all, so that its two nodes are one. */
    public boolean isTie() {
        return lengthM == 0.0 && kSum == 0.0;
    }

    /** The same with another sum of loss factors (a valve turned, a fitting added). */
    public Pipe withKSum(double newKSum) {
        return new Pipe(id, from, to, lengthM, boreM, roughnessM, newKSum);
    }

    /** The pipe without its ends. */
    Tubing tubing() {
        return new Tubing(lengthM, boreM, roughnessM, kSum);
    }
}
