package lungfish.network;

/**
 * Kinds of flow in a pipe. The bounds are names for people: the law is one formula throughout. 2100 and 4000 as in Munson, Young and
 * Okiishi, Fundamentals of Fluid Mechanics, ch. 8 (from memory).
 */
public enum Regime {
    /** Nothing moves. */
    STILL,
    /** Re below 2100. */
    LAMINAR,
    /** Between the two. */
    TRANSITIONAL,
    /** Re 4000 and above. */
    TURBULENT;

    private static final double STILL_RE = 1e-6;
    private static final double LAMINAR_RE = 2100.0;
    private static final double TURBULENT_RE = 4000.0;

    /** The regime at a Reynolds number; still below a millionth, which is rounding in a network that breathes. */
    public static Regime at(double re) {
        if (re < STILL_RE) {
            return STILL;
        }
        if (re < LAMINAR_RE) {
            return LAMINAR;
        }
        return re < TURBULENT_RE ? TRANSITIONAL : TURBULENT;
    }
}
