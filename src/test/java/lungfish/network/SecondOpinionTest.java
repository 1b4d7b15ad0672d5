package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Small networks solved by a general-purpose least-squares solver of another library (Levenberg–Marquardt, dense, slopes
 * by differences), with the laws written as pressures and not as squares: every node's pressure, every pipe's and every
 * drop's flow is an unknown.
 */
final class SecondOpinionTest {
    /** What the general solver leaves when its slopes are differences: far more than ours. */
    private static final double GENERAL_SOLVER = 1e-6;

    private static final double PA = 1e4;
    private static final double KG_PER_S = 1e-4;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void aGeneralSolverComesToTheSameFlows(long seed) {
        Network network = allOpen(seed);
        AsSet ours = Small.asSet(network);
        double[] theirs = new General(network).solve(ours);
        double density = network.conditions().airDensityKgPerM3();
        int drops = network.nodes().size() + network.pipes().size();
        for (int i = 0; i < network.drops().size(); i++) {
            double flow = theirs[drops + i] * KG_PER_S / density;
            assertThat(flow).isCloseTo(ours.drop(i).freeM3PerS(), within(GENERAL_SOLVER * ours.totalFreeM3PerS()));
        }
    }

    /** Held so high at every source that no drop is closed: the general solver knows no kinks. */
    private static Network allOpen(long seed) {
        Network room = RandomNetworks.roomLike(seed);
        Source first = room.sources().get(0);
        return room.withSources(java.util.List.of(new Source.FixedPressure("s", first.node(), 25_000.0)))
                .withDrops(room.drops().stream()
                        .map(drop -> drop.withValveK(drop.valveK() + 1e12))
                        .toList());
    }

    private static final class General {
        private final Network network;
        private final Shape shape;
        private final int nodes;
        private final int pipes;
        private final int size;

        General(Network network) {
            this.network = network;
            shape = Shape.of(network);
            nodes = shape.nodes;
            pipes = shape.pipes();
            size = nodes + pipes + shape.drops();
        }

        /** Starts a tenth away from our answer in every unknown, so that it must find its own way back. */
        double[] solve(AsSet ours) {
            double density = network.conditions().airDensityKgPerM3();
            double[] start = new double[size];
            for (int i = 0; i < nodes; i++) {
                start[i] = 1.1 * ours.nodeGaugePa(i) / PA;
            }
            for (int i = 0; i < pipes; i++) {
                start[nodes + i] = 0.9 * ours.pipe(i).freeM3PerS() * density / KG_PER_S;
            }
            for (int i = 0; i < shape.drops(); i++) {
                start[nodes + pipes + i] = 1.1 * ours.drop(i).freeM3PerS() * density / KG_PER_S;
            }
            var problem = new LeastSquaresBuilder()
                    .start(start)
                    .target(new double[size])
                    .model(point -> new Pair<>(new ArrayRealVector(misses(point.toArray())), slopes(point)))
                    .maxEvaluations(2000)
                    .maxIterations(2000)
                    .build();
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-14)
                    .withOrthoTolerance(1e-15)
                    .optimize(problem)
                    .getPoint()
                    .toArray();
        }

        private Array2DRowRealMatrix slopes(RealVector point) {
            double[][] matrix = new double[size][size];
            for (int column = 0; column < size; column++) {
                double[] more = point.toArray();
                double[] less = point.toArray();
                double step = 1e-6 * Math.max(1e-2, Math.abs(more[column]));
                more[column] += step;
                less[column] -= step;
                double[] up = misses(more);
                double[] down = misses(less);
                for (int row = 0; row < size; row++) {
                    matrix[row][column] = (up[row] - down[row]) / (2.0 * step);
                }
            }
            return new Array2DRowRealMatrix(matrix, false);
        }

        private double[] misses(double[] x) {
            double[] miss = new double[size];
            for (int i = 0; i < pipes; i++) {
                double flow = x[nodes + i];
                miss[shape.pipeFrom[i]] -= flow;
                miss[shape.pipeTo[i]] += flow;
                miss[nodes + i] = pipeMiss(i, x, flow * KG_PER_S);
            }
            for (int i = 0; i < shape.drops(); i++) {
                double flow = x[nodes + pipes + i];
                miss[shape.dropNode[i]] -= flow;
                double freeM3PerS = flow * KG_PER_S / network.conditions().airDensityKgPerM3();
                Drop drop = network.drops().get(i);
                double needPa = Drops.needed(network.conditions(), drop, drop.valveK(), freeM3PerS)
                        .totalPa();
                miss[nodes + pipes + i] = x[shape.dropNode[i]] - needPa / PA;
            }
            int source = shape.sourceNode[0];
            miss[source] = x[source] - 25_000.0 / PA;
            return miss;
        }

        private double pipeMiss(int i, double[] x, double kgPerS) {
            double ambientPa = network.conditions().ambientPa();
            double first = x[shape.pipeFrom[i]] * PA + ambientPa;
            double second = x[shape.pipeTo[i]] * PA + ambientPa;
            double loss =
                    network.pipes().get(i).tubing().law(network.conditions()).piDropPa2(kgPerS);
            return 10.0 * (first - second - loss / (first + second)) / PA;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 4})
    void theGeneralSolverMovesAwayFromItsStart(long seed) {
        Network network = allOpen(seed);
        AsSet ours = Small.asSet(network);
        double[] there = new General(network).solve(ours);
        double[] here = new General(network).misses(there);
        assertThat(Arrays.stream(here).map(Math::abs).max().orElseThrow()).isLessThan(GENERAL_SOLVER);
    }
}
