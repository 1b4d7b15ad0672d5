package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;

/** Runs of knots: where they are found, and that eliminating them one by one solves the same system. */
final class ChainsTest {
    private static Chains chains(int count, int... ends) {
        int[] low = new int[ends.length / 2];
        int[] high = new int[low.length];
        for (int e = 0; e < low.length; e++) {
            low[e] = ends[2 * e];
            high[e] = ends[2 * e + 1];
        }
        return new Chains(count, low, high, new boolean[count]);
    }

    @Test
    void aRingOnAFeedIsARunFromTheFeedToTheFeed() {
        // 0 is the trunk with three neighbours of its own, 1 the feed's knot, 2 to 6 the ring
        Chains ring = chains(10, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 1, 0, 7, 0, 8, 0, 9);
        assertThat(ring.count()).isEqualTo(1);
        assertThat(ring.before(0)).isEqualTo(1);
        assertThat(ring.behind(0)).isEqualTo(1);
        assertThat(new int[] {ring.vertex(0), ring.vertex(4)}).containsExactly(2, 6);
    }

    @Test
    void aBranchEndsLoose() {
        Chains branch = chains(8, 0, 1, 0, 2, 0, 3, 3, 4, 4, 5, 5, 6, 6, 7);
        assertThat(branch.count()).isEqualTo(1);
        assertThat(branch.size()).isEqualTo(5);
        assertThat(branch.before(0)).isZero();
        assertThat(branch.behind(0)).isEqualTo(-1);
    }

    @Test
    void aRingWithoutFeedIsCutAtOneKnot() {
        Chains ring = chains(6, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 0);
        assertThat(ring.size()).isEqualTo(5);
        assertThat(ring.before(0)).isEqualTo(ring.behind(0)).isZero();
    }

    @Test
    void threeKnotsInARowAreNoChain() {
        assertThat(chains(7, 0, 1, 0, 2, 0, 3, 3, 4, 4, 5).count()).isZero();
    }

    /** Rings, branches and doubled pipes at random, with held knots and sources among them. */
    private static Network strung(Random dice) {
        Small network = Small.network().node("n0");
        int nodes = 1;
        for (int run = 0; run < 1 + dice.nextInt(6); run++) {
            int from = dice.nextInt(nodes);
            int length = 1 + dice.nextInt(9);
            for (int i = 0; i < length; i++) {
                network.pipe(i == 0 ? "n" + from : "n" + (nodes - 1), "n" + nodes, 1.0, 0.02);
                nodes++;
            }
            if (dice.nextBoolean()) {
                network.pipe("n" + (nodes - 1), "n" + dice.nextInt(nodes), 1.0, 0.02);
            }
        }
        return network.build();
    }

    @Property
    void whatIsLeftOfAFrameIsNothing(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random dice = new Random(seed);
        Network network = strung(dice);
        Shape shape = Shape.of(network);
        Knots knots = Knots.of(shape);
        boolean[] held = new boolean[knots.count];
        for (int knot = 0; knot < held.length; knot++) {
            held[knot] = dice.nextInt(8) == 0;
        }
        Frame frame = new Frame(shape, knots, held);
        int count = frame.unknowns();
        DMatrixRMaj matrix = new DMatrixRMaj(count, count);
        DMatrixRMaj right = new DMatrixRMaj(count, 1);
        frame.clear();
        for (int i = 0; i < shape.pipes(); i++) {
            double g = Math.exp(dice.nextGaussian());
            double flow = dice.nextGaussian();
            if (frame.knotA[i] != frame.knotB[i]) {
                frame.addPipe(i, g, flow);
                int a = frame.unknownOfKnot[frame.knotA[i]];
                int b = frame.unknownOfKnot[frame.knotB[i]];
                add(matrix, right, a, b, g, flow);
                add(matrix, right, b, a, g, -flow);
            }
        }
        for (int knot = 0; knot < knots.count; knot++) {
            double g = Math.exp(dice.nextGaussian());
            double out = dice.nextGaussian();
            frame.addLeaf(knot, g, out);
            add(matrix, right, frame.unknownOfKnot[knot], -1, g, out);
        }
        frame.solve();
        DMatrixRMaj dense = new DMatrixRMaj(count, 1);
        if (count > 0) {
            CommonOps_DDRM.solve(matrix, right, dense);
        }
        for (int k = 0; k < count; k++) {
            assertThat(frame.change[k]).isCloseTo(dense.get(k), within(1e-9));
        }
    }

    private static void add(DMatrixRMaj matrix, DMatrixRMaj right, int here, int there, double g, double out) {
        if (here >= 0) {
            matrix.add(here, here, g);
            right.add(here, 0, -out);
            if (there >= 0) {
                matrix.add(here, there, -g);
            }
        }
    }

    @Test
    void aChainKeptAsItWasAnswersToItsEndsAlone() {
        // four knots in a row with no ground, links of 1, between ends that move by 1 and by 6: a straight line
        ChainFactor factor = new ChainFactor(new int[] {0, 4});
        double[] link = {1.0, 1.0, 1.0, 1.0, 1.0};
        double[] inverse = new double[4];
        double[] carried = {9.0, 9.0, 9.0, 9.0};
        factor.eliminate(0, link, inverse, carried);
        factor.keep(0);
        double[] x = new double[4];
        factor.back(0, 1.0, 6.0, link, inverse, carried, x);
        double[] line = {2.0, 3.0, 4.0, 5.0};
        for (int k = 0; k < 4; k++) {
            assertThat(x[k]).isCloseTo(line[k], withinPercentage(1e-12));
        }
        assertThat(factor.rightA[0]).isZero();
        // five links in a row lead a fifth across
        assertThat(factor.across[0]).isCloseTo(0.2, withinPercentage(1e-12));
        assertThat(Arrays.stream(factor.groundA).sum()).isZero();
    }
}
