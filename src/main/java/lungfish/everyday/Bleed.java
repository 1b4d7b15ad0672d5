package lungfish.everyday;

/**
 * The bleed turned so far that every blower stands where it stood; or shut, where even that is too little.
 *
 * @param gaugePa what the gauge shows then
 * @param bledM3PerS what it then lets out in all
 * @param moreM3PerS than before; negative: less
 * @param restShare by how much the most changed of those that it did not happen to then still moves
 * @param holds whether every blower stands where it stood
 */
public record Bleed(double gaugePa, double bledM3PerS, double moreM3PerS, double restShare, boolean holds) {
    /** What rounding leaves of no bleed, m³/s. */
    public static final double NONE_M3_PER_S = 1e-9;
}
