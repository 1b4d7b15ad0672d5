package lungfish.measured;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * One thing that may have happened, weighed by what was read. The unknowns are normally distributed and act on the readings in
 * proportion, so that readings are normally distributed too, with variances {@code A P Aᵀ + R} (JCGM 100:2008, 5.2.2), and what
 * the unknowns are, given the readings, follows (C. E. Rasmussen and C. K. I. Williams, "Gaussian Processes for Machine Learning",
 * 2006, equation A.6, from memory).
 */
final class Weighed {
    private static final double STANDS_OUT = 2;
    private static final int MOST_OTHERS = 3;

    private final Happening happening;
    private final List<Row> rows;
    private final Set<Integer> others;
    private final Unknowns unknowns;
    private final CholeskyDecomposition spread;
    private final RealVector pull;
    private final double lnWeight;

    private Weighed(Happening happening, double lnPrior, List<Row> rows, Set<Integer> others, Unknowns unknowns) {
        this.happening = happening;
        this.rows = rows;
        this.others = others;
        this.unknowns = unknowns;
        this.spread = new CholeskyDecomposition(spread(rows, unknowns));
        RealVector off = new ArrayRealVector(rows.stream().mapToDouble(Row::off).toArray());
        this.pull = rows.isEmpty() ? off : spread.getSolver().solve(off);
        this.lnWeight = lnPrior
                + others.size() * Math.log(Doubts.OTHER_ODDS / (1 - Doubts.OTHER_ODDS))
                + rows.stream().mapToDouble(Row::lnDensity).sum()
                - 0.5 * (off.dotProduct(pull) + lnDeterminant());
    }

    /** Weighs it; an outlet whose jar stands out may have another device than the room says, at a price. */
    static Weighed of(Happening happening, double lnPrior, List<Row> rows, Unknowns unknowns) {
        Weighed best = new Weighed(happening, lnPrior, rows, Set.of(), unknowns);
        while (best.others.size() < MOST_OTHERS) {
            Weighed better = best;
            for (int outlet : best.standingOut()) {
                Weighed each = best.withOther(outlet, lnPrior);
                better = each.lnWeight > better.lnWeight ? each : better;
            }
            if (better == best) {
                return best;
            }
            best = better;
        }
        return best;
    }

    private Weighed withOther(int outlet, double lnPrior) {
        Set<Integer> more = new HashSet<>(others);
        more.add(outlet);
        List<Row> changed = rows.stream()
                .map(row -> row.outlet() == outlet ? row.other() : row)
                .toList();
        return new Weighed(happening, lnPrior, changed, more, unknowns);
    }

    /** Outlets whose jars are pulled hardest. */
    private List<Integer> standingOut() {
        RealMatrix inverse = spread.getSolver().getInverse();
        List<Integer> outlets = new ArrayList<>();
        for (int a = 0; a < rows.size(); a++) {
            int outlet = rows.get(a).outlet();
            boolean standsOut = Math.abs(pull.getEntry(a)) > STANDS_OUT * Math.sqrt(inverse.getEntry(a, a));
            if (outlet >= 0 && standsOut && !others.contains(outlet) && !outlets.contains(outlet)) {
                outlets.add(outlet);
            }
        }
        return outlets;
    }

    private static RealMatrix spread(List<Row> rows, Unknowns unknowns) {
        double[][] spread = new double[rows.size()][rows.size()];
        for (int a = 0; a < rows.size(); a++) {
            for (int b = 0; b <= a; b++) {
                double sum = a == b ? rows.get(a).variance() : 0;
                sum += together(rows.get(a).slope(), rows.get(b).slope(), unknowns);
                spread[a][b] = sum;
                spread[b][a] = sum;
            }
        }
        return MatrixUtils.createRealMatrix(spread);
    }

    private static double together(double[] one, double[] other, Unknowns unknowns) {
        double sum = 0;
        for (int k = 0; k < one.length; k++) {
            double sd = unknowns.sd(k);
            sum += one[k] * other[k] * sd * sd;
        }
        return sum;
    }

    private double lnDeterminant() {
        RealMatrix root = spread.getL();
        double sum = 0;
        for (int a = 0; a < root.getRowDimension(); a++) {
            sum += 2 * Math.log(root.getEntry(a, a));
        }
        return sum;
    }

    Happening happening() {
        return happening;
    }

    /** Outlets that are taken for another device than the room says. */
    Set<Integer> others() {
        return others;
    }

    /** Natural logarithm of its probability, up to what all share. */
    double lnWeight() {
        return lnWeight;
    }

    /** Chi squared of what was read: about the number of readings where they agree. */
    double misfit() {
        return new ArrayRealVector(rows.stream().mapToDouble(Row::off).toArray()).dotProduct(pull);
    }

    int readings() {
        return rows.size();
    }

    /** The unknowns, given what was read. */
    double[] unknowns() {
        double[] at = new double[unknowns.count()];
        for (int a = 0; a < rows.size(); a++) {
            double[] slope = rows.get(a).slope();
            for (int k = 0; k < at.length; k++) {
                at[k] -= unknowns.sd(k) * unknowns.sd(k) * slope[k] * pull.getEntry(a);
            }
        }
        return at;
    }

    /**
     * What another reading would be, given those.
     *
     * @param at it would be with all unknowns 0
     * @param slope what it grows by with each unknown
     * @param noise variance of its own
     */
    Foreseen foreseen(double at, double[] slope, double noise) {
        RealVector shared = new ArrayRealVector(rows.size());
        for (int a = 0; a < rows.size(); a++) {
            shared.setEntry(a, together(rows.get(a).slope(), slope, unknowns));
        }
        double known = shared.dotProduct(spread.getSolver().solve(shared));
        double variance = together(slope, slope, unknowns) - known + noise;
        return new Foreseen(at - shared.dotProduct(pull), Math.max(noise, variance));
    }
}
