package lungfish.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lungfish.network.Drop;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Stretch;
import lungfish.room.Point;
import lungfish.room.Run;

/** One run as its network knows it: where along it something leaves or joins, and where the blower's air comes onto it. */
final class MainLine {
    /** Places on a run are known to the millimetre. */
    private static final double PLACE_M = 1e-3;

    /** The second feed of a main that comes back beside itself would be a third pipe along the same wall. */
    private static final double CLEARLY_SHORTER = 0.9;

    private final Run run;
    private final NavigableMap<Double, String> cuts = new TreeMap<>();
    private final Set<String> used;
    private final Set<String> joined;
    private final Map<String, Double> fromBlowerM;

    MainLine(Run run, PipedRoom piped) {
        this.run = run;
        this.fromBlowerM = fromBlowers(piped);
        Set<Integer> own = new HashSet<>();
        Set<Integer> others = new HashSet<>();
        for (Stretch stretch : piped.stretches()) {
            boolean isOwn = stretch.run().equals(run.id());
            (isOwn ? own : others).add(stretch.pipe());
            if (isOwn) {
                cut(stretch, piped.network().pipes().get(stretch.pipe()));
            }
        }
        List<Pipe> pipes = piped.network().pipes();
        this.joined = ends(others.stream().map(pipes::get).toList());
        this.used = new HashSet<>(ends(allBut(pipes, own)));
        piped.network().drops().stream().map(Drop::node).forEach(used::add);
    }

    private void cut(Stretch stretch, Pipe pipe) {
        cuts.put(stretch.fromM(), pipe.from());
        boolean comesRound = run.closed() && stretch.toM() > run.lengthM() - PLACE_M;
        if (!comesRound) {
            cuts.put(stretch.toM(), pipe.to());
        }
    }

    private static List<Pipe> allBut(List<Pipe> pipes, Set<Integer> those) {
        List<Pipe> rest = new ArrayList<>();
        for (int i = 0; i < pipes.size(); i++) {
            if (!those.contains(i)) {
                rest.add(pipes.get(i));
            }
        }
        return rest;
    }

    private static Set<String> ends(Collection<Pipe> pipes) {
        return pipes.stream()
                .flatMap(pipe -> List.of(pipe.from(), pipe.to()).stream())
                .collect(Collectors.toSet());
    }

    Run run() {
        return run;
    }

    /** Places along the run, m, where something leaves or joins it, the first first. */
    List<Double> stopsM() {
        return cuts.keySet().stream().filter(at -> used.contains(cuts.get(at))).toList();
    }

    /** Where the air of the blowers comes onto the run: its place with the shortest way from any of them. */
    Optional<Double> entryM() {
        return cuts.keySet().stream()
                .filter(at -> Double.isFinite(wayM(at)))
                .min(Comparator.comparingDouble(this::wayM));
    }

    private double wayM(double atM) {
        return fromBlowerM.getOrDefault(cuts.get(atM), Double.POSITIVE_INFINITY);
    }

    /** The place with the longest way along the run from where the air comes: half-way round a loop, else an end. */
    Optional<Double> farM() {
        double lengthM = run.lengthM();
        return entryM().map(entry -> {
            if (run.closed()) {
                return (entry + lengthM / 2) % lengthM;
            }
            return entry > lengthM / 2 ? 0.0 : lengthM;
        });
    }

    /** Whether a run leads straight from where the air comes onto this one to its farthest place. */
    boolean isSecondFeed(Run other) {
        boolean isLine = !other.closed() && other.points().size() > 1;
        return isLine && !other.id().equals(run.id()) && entryM().isPresent() && joins(other);
    }

    /** Whether a line from where the air comes to the farthest place is clearly shorter than the way along the pipe. */
    boolean isWorthASecondFeed() {
        Optional<Double> entry = entryM();
        if (entry.isEmpty()) {
            return false;
        }
        double far = farM().orElseThrow();
        double alongM = run.closed() ? run.lengthM() / 2 : Math.abs(far - entry.get());
        return run.at(entry.get()).distanceM(run.at(far)) < CLEARLY_SHORTER * alongM;
    }

    private boolean joins(Run other) {
        Point entry = run.at(entryM().orElseThrow());
        Point far = run.at(farM().orElseThrow());
        Point first = other.points().get(0);
        Point last = other.points().get(other.points().size() - 1);
        return (touch(first, entry) && touch(last, far)) || (touch(first, far) && touch(last, entry));
    }

    private static boolean touch(Point one, Point other) {
        return one.distanceM(other) <= Run.TOUCH_M;
    }

    /** Whether another run is joined at both of its ends. */
    boolean isBridge() {
        return !cuts.isEmpty()
                && joined.contains(cuts.firstEntry().getValue())
                && joined.contains(cuts.lastEntry().getValue());
    }

    /** The shortest way through the pipe from any blower to each node, m. */
    private static Map<String, Double> fromBlowers(PipedRoom piped) {
        Map<String, Double> ways = new HashMap<>();
        ArrayDeque<String> open = new ArrayDeque<>(piped.blowerNodes().values());
        open.forEach(node -> ways.put(node, 0.0));
        Map<String, List<Pipe>> at = new HashMap<>();
        for (Pipe pipe : piped.network().pipes()) {
            at.computeIfAbsent(pipe.from(), absent -> new ArrayList<>()).add(pipe);
            at.computeIfAbsent(pipe.to(), absent -> new ArrayList<>()).add(pipe);
        }
        while (!open.isEmpty()) {
            String node = open.remove();
            for (Pipe pipe : at.getOrDefault(node, List.of())) {
                String other = pipe.from().equals(node) ? pipe.to() : pipe.from();
                double way = ways.getOrDefault(node, 0.0) + pipe.lengthM();
                if (way < ways.getOrDefault(other, Double.POSITIVE_INFINITY) - PLACE_M / 10) {
                    ways.put(other, way);
                    open.add(other);
                }
            }
        }
        return ways;
    }
}
