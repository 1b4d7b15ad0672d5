package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ordering and factor, the two halves of the linear solve. */
final class FactorTest {
    @Property
    void itSolvesWhatADenseSolverSolves(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll @IntRange(min = 1, max = 40) int count) {
        Random dice = new Random(seed);
        int[][] ends = randomGraph(dice, count);
        double[] link = dice.doubles(ends[0].length, 0.1, 10.0).toArray();
        double[] ground = dice.doubles(count, 0.01, 1.0).toArray();
        double[] right = dice.doubles(count, -1.0, 1.0).toArray();
        double[] ours = right.clone();
        Cholesky cholesky = new Cholesky(count, ends[0], ends[1]);
        cholesky.factor(link, ground);
        cholesky.solve(ours);
        double[] theirs = dense(count, ends, link, ground, right);
        for (int i = 0; i < count; i++) {
            // conditions up to 1e4 on sixteen digits
            assertThat(ours[i]).isCloseTo(theirs[i], within(1e-9));
        }
    }

    private static int[][] randomGraph(Random dice, int count) {
        int[] low = new int[2 * count];
        int[] high = new int[2 * count];
        int found = 0;
        boolean[][] there = new boolean[count][count];
        for (int i = 0; i < 2 * count; i++) {
            int a = dice.nextInt(count);
            int b = dice.nextInt(count);
            if (a < b && !there[a][b]) {
                there[a][b] = true;
                low[found] = a;
                high[found++] = b;
            }
        }
        return new int[][] {Arrays.copyOf(low, found), Arrays.copyOf(high, found)};
    }

    private static double[] dense(int count, int[][] ends, double[] link, double[] ground, double[] right) {
        DMatrixRMaj matrix = new DMatrixRMaj(count, count);
        for (int i = 0; i < count; i++) {
            matrix.add(i, i, ground[i]);
        }
        for (int e = 0; e < link.length; e++) {
            matrix.add(ends[0][e], ends[0][e], link[e]);
            matrix.add(ends[1][e], ends[1][e], link[e]);
            matrix.add(ends[0][e], ends[1][e], -link[e]);
            matrix.add(ends[1][e], ends[0][e], -link[e]);
        }
        DMatrixRMaj x = new DMatrixRMaj(count, 1);
        CommonOps_DDRM.solve(matrix, new DMatrixRMaj(count, 1, true, right), x);
        return x.getData();
    }

    @Test
    void conductancesTwentyOrdersApartKeepTheirDigits() {
        // a wide link to an end with a needle to ground: by hand x = (b0 + b1)/ground, both ends alike
        Cholesky cholesky = new Cholesky(2, new int[] {0}, new int[] {1});
        cholesky.factor(new double[] {1e6}, new double[] {0.0, 1e-14});
        double[] b = {1e-5, 2e-5};
        cholesky.solve(b);
        assertThat(b[0]).isCloseTo(3e9, withinPercentage(1e-12));
        assertThat(b[1]).isCloseTo(3e9, withinPercentage(1e-12));
    }

    @Test
    void aGroupWithoutGroundStaysWhereItIs() {
        Cholesky cholesky = new Cholesky(2, new int[] {0}, new int[] {1});
        cholesky.factor(new double[] {2.0}, new double[] {0.0, 0.0});
        double[] b = {1.0, -1.0};
        cholesky.solve(b);
        // one end is the anchor, and the other differs by flow over conductance
        assertThat(b[1]).isZero();
        assertThat(b[0]).isCloseTo(0.5, within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 10, 100})
    void ringsOfRingsFillInInProportionToTheirSize(int rooms) {
        Network network = BenchNetwork.of(rooms);
        Shape shape = Shape.of(network);
        Knots knots = Knots.of(shape);
        boolean[] held = new boolean[knots.count];
        Frame frame = new Frame(shape, knots, held);
        // a ring eliminated from its ends leaves two entries a column, a tree one
        assertThat(frame.entries()).isLessThanOrEqualTo(2 * frame.unknowns() + 10);
    }

    @Test
    void aTreeFillsInNothing() {
        Small tree = Small.network().node("n0");
        for (int i = 1; i < 200; i++) {
            tree.pipe("n" + (i - 1) / 3, "n" + i, 1.0, 0.02);
        }
        Shape shape = Shape.of(tree.build());
        Knots knots = Knots.of(shape);
        assertThat(new Frame(shape, knots, new boolean[knots.count]).entries()).isEqualTo(199);
    }

    @Test
    void aHubOfAHundredThousandBranchesIsOrderedLeavesFirst() {
        int leaves = 100_000;
        int[] hub = new int[leaves];
        int[] leaf = new int[leaves];
        Arrays.setAll(leaf, i -> i + 1);
        int[] order = MinimumDegree.order(leaves + 1, hub, leaf);
        assertThat(order).doesNotHaveDuplicates().hasSize(leaves + 1);
        // the hub can be next to last at the earliest, when one leaf is left
        assertThat(Arrays.stream(order).limit(leaves - 1L)).doesNotContain(0);
    }

    @Test
    void aNetworkOfOneNodeHasNothingToFactor() {
        Network one = new Network(Conditions.usual(), List.of("a"), List.of(), List.of(), List.of(), Optional.empty());
        assertThat(Small.asSet(one).nodeGaugePa(0)).isZero();
    }
}
