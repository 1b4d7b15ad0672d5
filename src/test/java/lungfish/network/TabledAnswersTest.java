package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 30})
    void theBenchmarkNetworkHasTheAnswerOfTheLaw(int rooms) {
        same(BenchNetwork.of(rooms));
    }

    @Property
    void aRoomHasTheAnswerOfTheLaw(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        same(RandomNetworks.roomLike(seed));
    }

    private static void same(Network network) {
        Shape shape = Shape.of(network);
        Knots knots = Knots.of(shape);
        AsSetSolve tabled = new AsSetSolve(network, shape, knots, Laws.TABLED);
        AsSetSolve written = new AsSetSolve(network, shape, knots, Laws.WRITTEN);
        Refused refused = written.solve();
        assertThat(tabled.solve()).isEqualTo(refused);
        Assume.that(refused == null);
        double total = 0.0;
        for (double flow : written.dropFlow()) {
            total += flow;
        }
        for (int i = 0; i < shape.drops(); i++) {
            double flow = written.dropFlow()[i];
            assertThat(tabled.dropFlow()[i])
                    .as(network.drops().get(i).id())
                    .isCloseTo(flow, within(Math.max(SHARE * flow, SHARE_OF_TOTAL * total)));
        }
        for (int knot = 0; knot < knots.count; knot++) {
            assertThat(tabled.psi[knot]).isCloseTo(written.psi[knot], within(SHARE * Math.abs(written.psi[knot])));
        }
    }
}
