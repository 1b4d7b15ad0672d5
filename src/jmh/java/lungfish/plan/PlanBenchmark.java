package lungfish.plan;

import java.util.concurrent.TimeUnit;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.network.Answer;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomReader;
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

/** A whole plan from a room, with all percentiles; beside it one solve of the room's network, nothing known of the answer. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    /** Rooms of 7, 30, 70 and 320 outlets. */
    @Param({"starting-out", "garage-killifish", "basement-rainbows", "club-hall"})
    String demo = "starting-out";

    private final Planner planner = new Planner(CATALOGUE);
    private Room room = room(demo);
    private Network network = network();

    /** Reads the room, and plans it once for its network. */
    @Setup
    public void read() {
        room = room(demo);
        network = network();
    }

    private static Room room(String demo) {
        return new RoomReader(CATALOGUE).read(DemoRooms.bytes(demo)).orThrow();
    }

    private Network network() {
        return planner.plan(room).network().orElseThrow();
    }

    /** Everything that is live. */
    @Benchmark
    public Plan plan() {
        return planner.plan(room);
    }

    /** The measure for it: analysis, laws and one cold solve. */
    @Benchmark
    public Answer solve() {
        return Solver.of(network).asSet();
    }
}
