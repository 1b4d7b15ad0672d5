package lungfish.standing;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** A Markov chain in continuous time, for its steady state: {@code π Q = 0}, {@code Σ π = 1}, by a general library. */
final class Chain {
    private final RealMatrix rates;

    Chain(int states) {
        rates = MatrixUtils.createRealMatrix(states, states);
    }

    Chain goes(int from, int to, double rate) {
        rates.addToEntry(from, to, rate);
        rates.addToEntry(from, from, -rate);
        return this;
    }

    /** The share of time in each state. */
    double[] steady() {
        int states = rates.getRowDimension();
        RealMatrix equations = rates.transpose();
        for (int state = 0; state < states; state++) {
            equations.setEntry(states - 1, state, 1);
        }
        RealVector right = new ArrayRealVector(states);
        right.setEntry(states - 1, 1);
        return new LUDecomposition(equations, 0).getSolver().solve(right).toArray();
    }
}
