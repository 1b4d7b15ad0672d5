package lungfish.siphon;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.demand.Need;
import lungfish.piping.PipedRoom;
import lungfish.room.Blower;
import lungfish.room.Room;

/**
 * Where water could go in a room when the air stops.
 *
 * @param ways to each lower outlet, and to each machine below a water line, the worst one; the worst of all first
 * @param leaving the outlets by which water can leave its tank, in the order drawn: each wants a check valve of its own
 * @param open what the water finds open, for {@link #path}
 */
public record Siphons(List<Way> ways, List<Leaving> leaving, Waterways open) {
    /** A small pump, and the outlets whose airlines meet at it. */
    public record Pump(Blower machine, List<Need> served) {
        public Pump {
            served = List.copyOf(served);
        }
    }

    private static final Comparator<Way> WORST_FIRST = Comparator.comparing(Way::start)
            .thenComparing(Way::reachesMachine, Comparator.reverseOrder())
            .thenComparingLong(Siphons::liftedMillimetres)
            .thenComparing(Comparator.comparingDouble(Siphons::overM3).reversed())
            .thenComparing(Comparator.comparingDouble(Way::waterM3).reversed());

    /** Nothing is open to water. */
    public static final Siphons NONE = of(Waterways.NONE);

    public Siphons {
        ways = List.copyOf(ways);
        leaving = List.copyOf(leaving);
    }

    /**
     * Through the pipe of a room.
     *
     * @param blowers those that feed it; one of which the room says no place is left out
     */
    public static Siphons of(Room room, PipedRoom piped, List<Blower> blowers) {
        boolean allHeld = piped.needs().stream()
                .allMatch(need -> Leaving.isHeld(need.seat().outlet()));
        return allHeld ? NONE : of(PipeWays.of(room, piped, blowers));
    }

    /** Through the airlines of small pumps. */
    public static Siphons of(List<Pump> pumps) {
        return of(PumpWays.of(pumps));
    }

    private static Siphons of(Waterways open) {
        Rising rising = new Rising(open);
        return new Siphons(rising.ways().stream().sorted(WORST_FIRST).toList(), rising.leaving(), open);
    }

    /** Water that runs by itself takes its own rim in its stride. */
    private static long liftedMillimetres(Way way) {
        return way.start() == Way.Start.BY_ITSELF ? 0 : Math.round(way.liftM() * 1000);
    }

    private static double overM3(Way way) {
        return way.overM3().orElse(0);
    }

    /** The ways that start so. */
    public List<Way> ways(Way.Start start) {
        return ways.stream().filter(way -> way.start() == start).toList();
    }

    /** The height above which the pipe is higher than every water line that could run into it, m; absent where none could. */
    public Optional<Double> safeHeightM() {
        return leaving.stream().map(Leaving::lineM).max(Comparator.naturalOrder());
    }

    /** The course of a way of these. */
    public WaterPath path(Way way) {
        return new PathFinder(open, way).path();
    }
}
