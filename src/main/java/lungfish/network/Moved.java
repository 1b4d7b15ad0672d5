package lungfish.network;

/** How far the flows of one block have moved in a step, and what that makes of their tangents. */
final class Moved {
    private double share;
    private double missedPsi;
    private double missedKgPerS;
    private boolean bounded;

    /** Starts anew. */
    void reset() {
        share = 0.0;
        missedPsi = 0.0;
        missedKgPerS = 0.0;
        bounded = false;
    }

    /** Notes whether a flow, or a pressure, did not take the step that it was given. */
    void bounded(boolean isBounded) {
        bounded |= isBounded;
    }

    /**
     * Counts one element.
     *
     * @param change of its flow, kg/s
     * @param size of the flow, kg/s; infinite where nothing but its square bends the law
     * @param curve half the second derivative of its law
     * @param conductance of its tangent
     */
    void element(double change, double size, double curve, double conductance) {
        double moved = Math.abs(change);
        double psi = curve * moved * moved;
        if (moved > share * size) {
            share = moved / size;
        }
        if (psi > missedPsi) {
            missedPsi = psi;
        }
        if (psi * conductance > missedKgPerS) {
            missedKgPerS = psi * conductance;
        }
    }

    /** The largest change of a flow, as a share of it. */
    double share() {
        return share;
    }

    /** The most by which a law has left its tangent, Pa². */
    double missedPsi() {
        return missedPsi;
    }

    /** The most that such a miss is worth, kg/s. */
    double missedKgPerS() {
        return missedKgPerS;
    }

    boolean isBounded() {
        return bounded;
    }
}
