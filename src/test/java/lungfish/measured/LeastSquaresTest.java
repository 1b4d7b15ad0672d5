package lungfish.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The fit, on examples whose answers are published. */
final class LeastSquaresTest {
    /**
     * NIST Statistical Reference Datasets, nonlinear regression, Misra1a (lower difficulty), {@code y = b1 (1 − exp(−b2 x))}, start 2;
     * data and certified values from memory, and they hold each other: the certified sum of squares comes out of these data only.
     */
    private static final double[][] MISRA1A = {
        {10.07, 77.6},
        {14.73, 114.9},
        {17.94, 141.1},
        {23.93, 190.8},
        {29.61, 239.9},
        {35.18, 289.0},
        {40.02, 332.8},
        {44.82, 378.4},
        {50.76, 434.8},
        {55.05, 477.3},
        {61.01, 536.8},
        {66.40, 593.1},
        {75.47, 689.1},
        {81.78, 760.0}
    };

    @Test
    void fitsMisra1a() {
        LeastSquares.Found found = LeastSquares.of(LeastSquaresTest::misra1a, new double[] {250, 0.0005})
                .orElseThrow();
        assertThat(found.at()[0]).isEqualTo(2.3894212918e2, within(1e-6));
        assertThat(found.at()[1]).isEqualTo(5.5015643181e-4, within(1e-11));
        assertThat(found.sumOfSquares()).isEqualTo(1.2455138894e-1, within(1e-9));
        // the certified deviations of the parameters: their covariance times the residual variance over 12 degrees of
        // freedom
        double variance = found.sumOfSquares() / 12;
        assertThat(Math.sqrt(found.covariance()[0][0] * variance)).isEqualTo(2.7070075241, within(1e-5));
        assertThat(Math.sqrt(found.covariance()[1][1] * variance)).isEqualTo(7.2668688436e-6, within(1e-11));
    }

    private static LeastSquares.Model misra1a(double[] b) {
        double[] residuals = new double[MISRA1A.length];
        double[][] slopes = new double[MISRA1A.length][];
        for (int i = 0; i < residuals.length; i++) {
            double decay = Math.exp(-b[1] * MISRA1A[i][1]);
            residuals[i] = b[0] * (1 - decay) - MISRA1A[i][0];
            slopes[i] = new double[] {1 - decay, b[0] * MISRA1A[i][1] * decay};
        }
        return new LeastSquares.Model(residuals, slopes);
    }

    /**
     * The circle of the library's own guide to least squares: the centre of a circle of radius 70 near five points, from (100, 50).
     * The guide and its test give (96.0759, 48.1352), with a mean distance of 69.9602 (from memory).
     */
    @Test
    void fitsTheLibrarysCircle() {
        double[][] points = {{30, 68}, {50, -6}, {110, -20}, {35, 15}, {45, 97}};
        LeastSquares.Found found = LeastSquares.of(
                        at -> {
                            double[] residuals = new double[points.length];
                            double[][] slopes = new double[points.length][];
                            for (int i = 0; i < points.length; i++) {
                                double dx = at[0] - points[i][0];
                                double dy = at[1] - points[i][1];
                                double distance = Math.hypot(dx, dy);
                                residuals[i] = distance - 70;
                                slopes[i] = new double[] {dx / distance, dy / distance};
                            }
                            return new LeastSquares.Model(residuals, slopes);
                        },
                        new double[] {100, 50})
                .orElseThrow();
        assertThat(found.at()[0]).isEqualTo(96.0759, within(5e-2));
        assertThat(found.at()[1]).isEqualTo(48.1352, within(5e-2));
    }

    @Test
    void saysSoWhereNothingSettles() {
        assertThat(LeastSquares.of(
                        at -> new LeastSquares.Model(
                                new double[] {Double.NaN, Double.NaN}, new double[][] {{0, 0}, {0, 0}}),
                        new double[] {1, 1}))
                .isEmpty();
    }
}
