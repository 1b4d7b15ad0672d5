package lungfish.network;

/**
 * How far the flows of one block have moved in a step, and how far that takes the laws from their tangents.
 *
 * <p>With Δ the change of a flow and h its law, that is {@code h″ Δ²/2}, which is counted, and a third term, which is
 * bounded: at most {@code 72 δ² h′ Δ} with {@code δ = Δ/ṁ}. For nothing bends faster than Churchill's friction where it
 * leaves the laminar line: the term that does it goes as Re³⁶ and takes f·Re up with its twelfth root, so that each
 * further derivative brings at most 36/ṁ, and {@code h″} itself at most {@code 12 h′/ṁ}: {@code 12 · 36/6 = 72}.
 */
final class Moved {
    private static final double THIRD = 72.0;

    /** Beyond this share of a flow the terms after the third would have to be asked for as well. */
    private static final double MOST_SHARE = 1e-3;

    private double share;
    private double most;
    private double push;
    private double missedPsi;
    private double missedKgPerS;
    private boolean bounded;

    /** Starts anew. */
    void reset() {
        share = 0.0;
        most = 0.0;
        push = 0.0;
        missedPsi = 0.0;
        missedKgPerS = 0.0;
        bounded = false;
    }

    /** Notes whether a flow, or a pressure, did not take the step that it was given. */
    void bounded(boolean isBounded) {
        bounded |= isBounded;
    }

    /**
     * Counts one element whose law bends.
     *
     * @param change of its flow, kg/s
     * @param size of the flow, kg/s
     * @param curve half the second derivative of its law
     * @param conductance of its tangent
     */
    void element(double change, double size, double curve, double conductance) {
        double moved = Math.abs(change);
        if (moved > share * size) {
            share = moved / size;
        }
        if (moved > push * conductance) {
            push = moved / conductance;
        }
        if (moved > most) {
            most = moved;
        }
        square(moved, curve, conductance);
    }

    /** Counts one element whose law has a second derivative and no other. */
    void square(double change, double curve, double conductance) {
        double psi = Math.abs(curve) * change * change;
        if (psi > missedPsi) {
            missedPsi = psi;
        }
        if (psi * conductance > missedKgPerS) {
            missedKgPerS = psi * conductance;
        }
    }

    /** Whether some flow or pressure did not take the step that it was given. */
    boolean isBounded() {
        return bounded;
    }

    /** Whether some flow moved further than tangents can be judged for. */
    boolean isFar() {
        return bounded || !(share <= MOST_SHARE);
    }

    /** The most by which a law has left its tangent, Pa². */
    double missedPsi() {
        return missedPsi + THIRD * share * share * push;
    }

    /** The most that such a miss is worth, kg/s. */
    double missedKgPerS() {
        return missedKgPerS + THIRD * share * share * most;
    }
}
