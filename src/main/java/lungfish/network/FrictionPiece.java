package lungfish.network;

import lungfish.air.Friction;

/**
 * f·Re of Churchill's law over a short range of Reynolds numbers, as a polynomial of degree 7 in
 * {@code t = (Re − centre)/half}, through the zeros of a Chebyshev polynomial.
 *
 * <p>Eight numbers side by side, all final: a piece that one thread has made is whole to every other.
 */
final class FrictionPiece {
    private static final int POINTS = 8;

    private final double centre;
    private final double perHalf;
    private final double c0;
    private final double c1;
    private final double c2;
    private final double c3;
    private final double c4;
    private final double c5;
    private final double c6;
    private final double c7;

    /** Slow air: 64 at every place. */
    static final FrictionPiece LAMINAR = new FrictionPiece();

    private FrictionPiece() {
        centre = 0.0;
        perHalf = 0.0;
        c0 = Friction.LAMINAR_DARCY_TIMES_RE;
        c1 = 0.0;
        c2 = 0.0;
        c3 = 0.0;
        c4 = 0.0;
        c5 = 0.0;
        c6 = 0.0;
        c7 = 0.0;
    }

    /** Takes the law at eight places between two Reynolds numbers; in the laminar range it takes the law as it goes on. */
    FrictionPiece(double fromRe, double toRe, double relativeRoughness) {
        centre = 0.5 * (fromRe + toRe);
        double half = 0.5 * (toRe - fromRe);
        perHalf = 1.0 / half;
        double[] c = new double[POINTS];
        for (int point = 0; point < POINTS; point++) {
            double value = Friction.darcyTimesRe(centre + half * ZEROS[point], relativeRoughness);
            for (int power = 0; power < POINTS; power++) {
                c[power] += LAGRANGE[point][power] * value;
            }
        }
        c0 = c[0];
        c1 = c[1];
        c2 = c[2];
        c3 = c[3];
        c4 = c[4];
        c5 = c[5];
        c6 = c[6];
        c7 = c[7];
    }

    private static final double[] ZEROS = zeros();
    private static final double[][] LAGRANGE = lagrange();

    private static double[] zeros() {
        double[] zeros = new double[POINTS];
        for (int k = 0; k < POINTS; k++) {
            zeros[k] = Math.cos(Math.PI * (k + 0.5) / POINTS);
        }
        return zeros;
    }

    /** Coefficients of the polynomials that are 1 at one zero and 0 at all others, constant first. */
    private static double[][] lagrange() {
        double[][] all = new double[POINTS][POINTS];
        for (int one = 0; one < POINTS; one++) {
            all[one][0] = 1.0;
            int degree = 0;
            for (int other = 0; other < POINTS; other++) {
                if (other != one) {
                    multiply(all[one], degree++, ZEROS[other], ZEROS[one] - ZEROS[other]);
                }
            }
        }
        return all;
    }

    /** Multiplies a polynomial by {@code (t − zero)/scale}. */
    private static void multiply(double[] polynomial, int degree, double zero, double scale) {
        for (int power = degree + 1; power >= 0; power--) {
            double shifted = power == 0 ? 0.0 : polynomial[power - 1];
            polynomial[power] = (shifted - zero * polynomial[power]) / scale;
        }
    }

    /** Where a Reynolds number lies in the piece, −1 to 1. */
    double place(double re) {
        return (re - centre) * perHalf;
    }

    /** f·Re at a place. In pairs and not in a row: what waits for nothing is worked out side by side. */
    double value(double t) {
        double t2 = t * t;
        return (c0 + c1 * t) + (c2 + c3 * t) * t2 + ((c4 + c5 * t) + (c6 + c7 * t) * t2) * (t2 * t2);
    }

    /** d(f·Re)/dRe at a place. */
    double slope(double t) {
        double t2 = t * t;
        double low = (c1 + 2.0 * c2 * t) + (3.0 * c3 + 4.0 * c4 * t) * t2;
        return (low + ((5.0 * c5 + 6.0 * c6 * t) + 7.0 * c7 * t2) * (t2 * t2)) * perHalf;
    }

    /** d²(f·Re)/dRe² at a place, to a few digits. */
    double bend(double t) {
        return ((2.0 * c2 + 6.0 * c3 * t) + (12.0 * c4 + 20.0 * c5 * t) * (t * t)) * (perHalf * perHalf);
    }
}
