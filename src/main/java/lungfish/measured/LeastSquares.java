package lungfish.measured;

import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Least squares by the Levenberg–Marquardt method of a library. Weights are in the residuals: each is divided by its doubt. */
final class LeastSquares {
    private static final int MOST_STEPS = 100;
    private static final double CLOSE_ENOUGH = 1e-9;

    private LeastSquares() {}

    /**
     * A model at a point.
     *
     * @param residuals what is left at each row
     * @param slopes how each grows with each parameter, a row for each
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on at once, never compared
    record Model(double[] residuals, double[][] slopes) {}

    /**
     * The point with the least sum of squares.
     *
     * @param covariance of the parameters, where each residual has a variance of 1
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    record Found(double[] at, double[][] covariance, double sumOfSquares) {}

    /** Goes down from a start; empty where the model cannot be evaluated on the way, or does not settle. */
    static Optional<Found> of(Function<double[], Model> model, double[] start) {
        int rows = model.apply(start).residuals().length;
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(CLOSE_ENOUGH)
                    .withParameterRelativeTolerance(CLOSE_ENOUGH)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .model(point -> {
                                Model here = model.apply(point.toArray());
                                return new Pair<>(
                                        new ArrayRealVector(here.residuals(), false),
                                        new Array2DRowRealMatrix(here.slopes(), false));
                            })
                            .target(new double[rows])
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            return Optional.of(new Found(
                    optimum.getPoint().toArray(),
                    optimum.getCovariances(1e-14).getData(),
                    optimum.getResiduals().dotProduct(optimum.getResiduals())));
        } catch (MathRuntimeException e) {
            return Optional.empty(); // singular, or no end: the caller says that it cannot tell
        }
    }
}
