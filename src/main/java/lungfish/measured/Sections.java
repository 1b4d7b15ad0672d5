package lungfish.measured;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.air.Tube;
import lungfish.catalogue.FittingClass;
import lungfish.network.Pipe;
import lungfish.piping.Stretch;
import lungfish.room.Outlet;
import lungfish.room.Run;

/**
 * The pipe between its valves. With all of them shut it falls into sections; with some of them shut, sections hang together. A
 * gauge at the blowers sees what hangs together with them.
 */
final class Sections {
    /** A piece of pipe that no valve parts, between two ends. */
    private record Piece(int from, int to, double lengthM, double volumeM3) {}

    /** A valve, between the ends of two pieces. */
    private record Gate(Outlet.OnRun at, int from, int to) {}

    private final Ground ground;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Gate> gates = new ArrayList<>();
    private final Map<String, Integer> ends = new HashMap<>();
    private final int[] section;
    private final int count;

    Sections(Ground ground) {
        this.ground = ground;
        ground.network().nodes().forEach(node -> ends.put(node, ends.size()));
        List<Pipe> pipes = ground.network().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            part(i, pipes.get(i));
        }
        int[] roots = roots(valves());
        Map<Integer, Integer> numbers = new HashMap<>();
        section = pieces.stream()
                .mapToInt(piece -> numbers.computeIfAbsent(roots[piece.from()], root -> numbers.size()))
                .toArray();
        count = numbers.size();
    }

    private void part(int number, Pipe pipe) {
        List<Outlet.OnRun> valves =
                ground.piped().stretch(number).stream().flatMap(this::valves).toList();
        int from = end(pipe.from());
        double each = pipe.lengthM() / (valves.size() + 1);
        for (Outlet.OnRun valve : valves) {
            int before = end(pipe.id() + " before " + valve.atM());
            int behind = end(pipe.id() + " behind " + valve.atM());
            add(from, before, each, pipe);
            gates.add(new Gate(valve, before, behind));
            from = behind;
        }
        add(from, end(pipe.to()), each, pipe);
    }

    private int end(String name) {
        Integer known = ends.get(name);
        if (known != null) {
            return known;
        }
        int next = ends.size();
        ends.put(name, next);
        return next;
    }

    private void add(int from, int to, double lengthM, Pipe pipe) {
        pieces.add(new Piece(from, to, lengthM, lengthM * Tube.areaM2(pipe.boreM())));
    }

    private Stream<Outlet.OnRun> valves(Stretch stretch) {
        Run run = ground.plan().room().runs().stream()
                .filter(each -> each.id().equals(stretch.run()))
                .findFirst()
                .orElseThrow();
        return run.fittings().stream()
                .filter(fitting -> ground.catalogue()
                        .fitting(fitting.kind())
                        .filter(FittingClass::valve)
                        .isPresent())
                .filter(fitting -> lies(fitting.atM(), stretch) || lies(fitting.atM() + run.lengthM(), stretch))
                .map(fitting -> new Outlet.OnRun(run.id(), fitting.atM()));
    }

    private static boolean lies(double atM, Stretch stretch) {
        return atM >= stretch.fromM() && atM < stretch.toM();
    }

    /** How many there are; 1 where the pipe has no valve that parts it. */
    int count() {
        return count;
    }

    /** All valves of the pipe. */
    List<Outlet.OnRun> valves() {
        return gates.stream().map(Gate::at).toList();
    }

    /** The share of all pipe that a section has, by length. */
    double share(int number) {
        double all = pieces.stream().mapToDouble(Piece::lengthM).sum();
        return IntStream.range(0, section.length)
                        .filter(i -> section[i] == number)
                        .mapToDouble(i -> pieces.get(i).lengthM())
                        .sum()
                / Math.max(1e-9, all);
    }

    /** Which sections hang together with the blowers while these valves stand shut. */
    boolean[] reached(List<Outlet.OnRun> shut) {
        int[] roots = roots(shut);
        boolean[] reached = new boolean[count];
        for (int i = 0; i < section.length; i++) {
            int root = roots[pieces.get(i).from()];
            reached[section[i]] |= blowers().anyMatch(blower -> roots[blower] == root);
        }
        return reached;
    }

    private IntStream blowers() {
        return ground.fleet().placed().stream().mapToInt(placed -> ends.getOrDefault(placed.node(), 0));
    }

    /** Volume of the sections that are marked, m³. */
    double volumeM3(boolean[] reached) {
        return IntStream.range(0, section.length)
                .filter(i -> reached[section[i]])
                .mapToDouble(i -> pieces.get(i).volumeM3())
                .sum();
    }

    /** The stretches of the drawing that a section is made of. */
    List<Stretch> stretches(int number) {
        List<Stretch> all = new ArrayList<>();
        int piece = 0;
        List<Pipe> pipes = ground.network().pipes();
        for (int i = 0; i < pipes.size(); i++) {
            List<Double> cuts = new ArrayList<>();
            Stretch stretch = ground.piped().stretch(i).orElse(null);
            int parts = 1;
            if (stretch != null) {
                cuts.addAll(valves(stretch).map(Outlet.OnRun::atM).toList());
                parts += cuts.size();
                for (int k = 0; k < parts; k++) {
                    if (section[piece + k] == number) {
                        all.add(new Stretch(
                                i,
                                stretch.run(),
                                k == 0 ? stretch.fromM() : cuts.get(k - 1),
                                k == cuts.size() ? stretch.toM() : cuts.get(k)));
                    }
                }
            }
            piece += parts;
        }
        return all;
    }

    private int[] roots(List<Outlet.OnRun> shut) {
        int[] parent = IntStream.range(0, ends.size()).toArray();
        pieces.forEach(piece -> join(parent, piece.from(), piece.to()));
        gates.stream().filter(gate -> !shut.contains(gate.at())).forEach(gate -> join(parent, gate.from(), gate.to()));
        int[] roots = new int[parent.length];
        Arrays.setAll(roots, i -> root(parent, i));
        return roots;
    }

    private static void join(int[] parent, int one, int other) {
        parent[root(parent, one)] = root(parent, other);
    }

    private static int root(int[] parent, int start) {
        int at = start;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
