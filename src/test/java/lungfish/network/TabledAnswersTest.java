package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that were found with tabled friction, beside answers of the same solver with the law as it is written. */
final class TabledAnswersTest {
    /** Share of its own flow that any drop may be off. */
    private static final double SHARE = 1e-9;

    /** A drop that just opens divides by almost nothing: its flow is known to this share of the total only. */
    private static final double SHARE_OF_TOTAL = 1e-12;

    private static final int TURNS = 8;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 30})
    void theBenchmarkNetworkHasTheAnswerOfTheLaw(int rooms) {
        same(BenchNetwork.of(rooms));
    }

    @Property
    void aRoomHasTheAnswerOfTheLaw(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        same(RandomNetworks.roomLike(seed));
    }

    /** One valve after another, some of them shut or opened again: warm starts that keep what did not move. */
    @Property
    void turnedValveByValveItStillHasTheAnswerOfTheLaw(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        turnedValveByValve(RandomNetworks.roomLike(seed), new Random(seed));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 10})
    void theBenchmarkNetworkTurnedValveByValveHasTheAnswerOfTheLaw(int rooms) {
        turnedValveByValve(BenchNetwork.of(rooms), new Random(rooms));
    }

    private static void turnedValveByValve(Network network, Random dice) {
        AsSetSolve warm = solver(network, Laws.TABLED);
        Assume.that(warm.solve() == null && !network.drops().isEmpty());
        List<Drop> drops = new ArrayList<>(network.drops());
        for (int turn = 0; turn < TURNS; turn++) {
            int i = dice.nextInt(drops.size());
            double valveK = dice.nextInt(6) == 0 ? Drop.SHUT_K : 1e12 * Math.exp(dice.nextGaussian());
            drops.set(i, drops.get(i).withValveK(valveK));
            warm.turnValve(i, valveK);
            if (dice.nextBoolean()) {
                warm.solve();
            }
        }
        AsSetSolve cold = solver(network.withDrops(drops), Laws.WRITTEN);
        Refused refused = cold.solve();
        assertThat(warm.solve()).isEqualTo(refused);
        Assume.that(refused == null);
        same(network, warm, cold);
    }

    private static AsSetSolve solver(Network network, Laws laws) {
        Shape shape = Shape.of(network);
        return new AsSetSolve(network, shape, Knots.of(shape), laws);
    }

    private static void same(Network network) {
        AsSetSolve tabled = solver(network, Laws.TABLED);
        AsSetSolve written = solver(network, Laws.WRITTEN);
        Refused refused = written.solve();
        assertThat(tabled.solve()).isEqualTo(refused);
        Assume.that(refused == null);
        same(network, tabled, written);
    }

    private static void same(Network network, AsSetSolve tabled, AsSetSolve written) {
        double[] here = tabled.dropFlow();
        double[] there = written.dropFlow();
        double total = Arrays.stream(there).sum();
        for (int i = 0; i < there.length; i++) {
            assertThat(here[i])
                    .as(network.drops().get(i).id())
                    .isCloseTo(there[i], within(Math.max(SHARE * there[i], SHARE_OF_TOTAL * total)));
        }
        for (int knot = 0; knot < written.psi.length; knot++) {
            assertThat(tabled.psi[knot]).isCloseTo(written.psi[knot], within(SHARE * Math.abs(written.psi[knot])));
        }
    }
}
