package lungfish.sure;

import java.util.concurrent.TimeUnit;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
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

/** How sure a plan is: a thousand samples over the whole bench, with stages and weights. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SureBench {
    /** Rooms of 7, 30, 70 and 320 outlets. */
    @Param({"starting-out", "garage-killifish", "basement-rainbows", "club-hall"})
    String demo = "starting-out";

    private final Planner planner = new Planner(CatalogueFiles.load());
    private Room room = room(demo);

    /** Reads the room. */
    @Setup
    public void read() {
        room = room(demo);
    }

    private static Room room(String demo) {
        return new RoomReader(CatalogueFiles.load()).read(DemoRooms.bytes(demo)).orThrow();
    }

    /** On two threads. */
    @Benchmark
    public Sureness sure() {
        return Sampling.of(planner, room, Sampling.USUAL_SAMPLES, Sampling.USUAL_SEED, Progress.UNHEARD)
                .orElseThrow();
    }
}
