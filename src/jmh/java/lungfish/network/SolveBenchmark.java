package lungfish.network;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The benchmark network as set: cold (nothing known of the answer), warm (from the last answer after one valve was
 * turned), first (a new network: analysis, laws and a cold solve), and tuned; and a peer that solves the same steps on
 * the sparse Cholesky of another library.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SolveBenchmark {
    private static final double TURN = 1.5;

    /** Taps, in rooms of 100. */
    @Param({"100", "1000", "10000", "100000"})
    int outlets;

    private Network network = BenchNetwork.of(1);
    private AsSetSolve solve = Solver.of(network).asSetSolve();
    private PeerNewton peer = new PeerNewton(network);
    private Solver tuner = Solver.of(network);
    private double valveK;
    private boolean turned;

    /** Builds both, and solves once so that the last answer is there. */
    @Setup
    public void build() {
        network = BenchNetwork.of(outlets / 100);
        solve = Solver.of(network).asSetSolve();
        peer = new PeerNewton(network);
        valveK = network.drops().get(outlets / 2).valveK();
        solve.solve();
        peer.solve();
        List<Drop> wishing =
                network.drops().stream().map(drop -> drop.withTarget(5e-5)).toList();
        tuner = Solver.of(network.withDrops(wishing));
    }

    /** Ours, nothing known. */
    @Benchmark
    public @Nullable Refused cold() {
        solve.forget();
        return solve.solve();
    }

    /** Ours, one valve turned. */
    @Benchmark
    public @Nullable Refused warm() {
        turned = !turned;
        solve.turnValve(outlets / 2, turned ? valveK * TURN : valveK);
        return solve.solve();
    }

    /** Ours, a new network. */
    @Benchmark
    public @Nullable Refused first() {
        return Solver.of(network).asSetSolve().solve();
    }

    /** Ours, every drop throttled to one target; the answer with its spares included. */
    @Benchmark
    public Answer tuned() {
        return tuner.tuned();
    }

    /** The peer, one valve turned. */
    @Benchmark
    public int peerWarm() {
        turned = !turned;
        return peer.solve(outlets / 2, turned ? valveK * TURN : valveK);
    }

    /** The peer, nothing known. */
    @Benchmark
    public int peerCold() {
        return peer.solve();
    }
}
