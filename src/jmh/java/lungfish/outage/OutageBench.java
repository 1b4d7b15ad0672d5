package lungfish.outage;

import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
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

/** An outage of 48 h played through, every tank likely and cautious; beside it the plan of the same room. */
@State(Scope.Thread)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class OutageBench {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double HOURS = 48;

    /** Rooms of 6, 30, 63 and 320 tanks. */
    @Param({"starting-out", "garage-killifish", "basement-rainbows", "club-hall"})
    String demo = "club-hall";

    private final Planner planner = new Planner(CATALOGUE);
    private Room room = room(demo);
    private Plan plan = planner.plan(room);
    private Drills drills = drills();
    private Failing airline = firstAirline();

    /** Reads and plans the room. */
    @Setup
    public void read() {
        room = room(demo);
        plan = planner.plan(room);
        drills = drills();
        airline = firstAirline();
    }

    private static Room room(String demo) {
        return new RoomReader(CATALOGUE).read(DemoRooms.bytes(demo)).orThrow();
    }

    private Drills drills() {
        return Drills.of(plan, CATALOGUE).orElseThrow();
    }

    private Failing firstAirline() {
        return drills.possible().stream()
                .filter(failing -> failing.kind() == Failing.Kind.AIRLINE_OFF)
                .findFirst()
                .orElseThrow();
    }

    /** The mains fail. */
    @Benchmark
    public Drill mains() {
        return drills.play(Scene.mains(HOURS));
    }

    /** An airline slips off: the network is solved again, and every tank breathes a little less. */
    @Benchmark
    public Drill airline() {
        return drills.play(new Scene(airline, OptionalDouble.empty(), HOURS * 3600));
    }

    /** The measure for it. */
    @Benchmark
    public Plan plan() {
        return planner.plan(room);
    }
}
