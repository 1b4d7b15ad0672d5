package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the solver's loop leaves behind for the garbage collector: nothing. */
final class NoAllocationTest {
    private static final int SOLVES = 200;

    /** A cold start makes a few arrays as long as the network has pieces, here one; a warm one makes none. */
    private static final long COLD_BYTES_EACH = 200;

    /** What asking for the count itself may cost. */
    private static final long ASKING_BYTES = 1000;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @ParameterizedTest
    @ValueSource(ints = {1, 10})
    void turningAValveAllocatesNothingInAnyStep(int rooms) {
        Network network = BenchNetwork.of(rooms);
        AsSetSolve solve = Solver.of(network).asSetSolve();
        double valveK = network.drops().get(50).valveK();
        for (int round = 0; round < 2; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            int steps = 0;
            for (int i = 0; i < SOLVES; i++) {
                solve.turnValve(50, i % 2 == 0 ? 1.5 * valveK : valveK);
                assertSolved(solve.solve());
                steps += solve.steps();
            }
            long allocated = threads.getCurrentThreadAllocatedBytes() - before;
            assertThat(steps).isGreaterThan(SOLVES);
            if (round > 0) {
                assertThat(allocated).isLessThanOrEqualTo(ASKING_BYTES);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 10})
    void aColdStartAllocatesNoMoreForALargeNetworkThanForASmallOne(int rooms) {
        AsSetSolve solve = Solver.of(BenchNetwork.of(rooms)).asSetSolve();
        for (int round = 0; round < 2; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int i = 0; i < SOLVES; i++) {
                solve.forget();
                assertSolved(solve.solve());
            }
            long allocated = threads.getCurrentThreadAllocatedBytes() - before;
            if (round > 0) {
                assertThat(allocated).isLessThanOrEqualTo(SOLVES * COLD_BYTES_EACH + ASKING_BYTES);
            }
        }
    }

    /** A library's assertion would allocate itself. */
    private static void assertSolved(@org.jspecify.annotations.Nullable Refused refused) {
        if (refused != null) {
            throw new AssertionError(refused);
        }
    }
}
