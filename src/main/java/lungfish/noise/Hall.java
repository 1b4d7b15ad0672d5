package lungfish.noise;

import lungfish.room.Shell;

/**
 * A room as sound sees it: the diffuse field of Sabine and Eyring, as in every textbook of room acoustics (from memory).
 *
 * @param surfaceM2 of all its walls, floor and ceiling
 * @param absorption mean of its surfaces, above 0 and below 1
 */
public record Hall(double surfaceM2, double absorption) {
    /** The most that is taken: a mean absorption of 1 would be the open air. */
    private static final double MOST_ABSORPTION = 0.99;

    private static final double LEAST_ABSORPTION = 0.01;

    public Hall {
        absorption = Math.min(MOST_ABSORPTION, Math.max(LEAST_ABSORPTION, absorption));
    }

    /** A box of walls. */
    public static Hall of(Shell shell, double absorption) {
        double walls = (shell.lengthM() + shell.widthM()) * shell.heightM();
        return new Hall(2 * (walls + shell.lengthM() * shell.widthM()), absorption);
    }

    /** Room constant {@code R = S ᾱ/(1 − ᾱ)}, m² (Sabine's room, any textbook of room acoustics). */
    public double constantM2() {
        return surfaceM2 * absorption / (1 - absorption);
    }

    /**
     * What reaches an ear, straight and by way of the walls: {@code Lp − Lw = 10 lg(Q/(4πr²) + 4/R)}.
     *
     * @param directivity Q: 1 in mid-air, 2 on a floor, 4 in an edge, 8 in a corner
     * @return dB to add to a sound power level
     */
    public double reachingDb(double directivity, double distanceM) {
        double straight = directivity / (4 * Math.PI * distanceM * distanceM);
        return 10 * Math.log10(straight + 4 / constantM2());
    }
}
