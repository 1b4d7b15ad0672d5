package lungfish.growth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.headroom.Fits;
import lungfish.headroom.Newcomer;
import lungfish.headroom.Search;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Spot;
import lungfish.piping.Stretch;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.sizing.Candidate;

/** Makes the headroom map of a room: the main is cut finely, and at every cut new outlets are hung on until a limit breaks. */
public final class Mapping {
    /** No two places lie further apart along the pipe, m. */
    private static final double EVERY_M = 0.5;

    private final Planner planner;
    private final Basis basis;
    private final Candidate candidate;
    private final Newcomer newcomer;
    private final List<Place> places = new ArrayList<>();
    private final Map<String, Integer> placeOfNode = new HashMap<>();

    private Mapping(Planner planner, Basis basis, Newcomer newcomer) {
        this.planner = planner;
        this.basis = basis;
        this.candidate = basis.chosen();
        this.newcomer = newcomer;
    }

    /**
     * The map.
     *
     * @return empty where the room cannot be solved
     */
    public static Optional<HeadroomMap> of(Planner planner, Room room, NewKind kind, Progress progress) {
        return planner.basis(room, OptionalDouble.of(EVERY_M))
                .map(basis -> new Mapping(planner, basis, kind.newcomer(basis)).map(progress));
    }

    private HeadroomMap map(Progress progress) {
        List<Rack> planned =
                basis.room().racks().stream().filter(Rack::isPlanned).toList();
        List<String> nodes = onPipe(basis);
        int steps = nodes.size() * (1 + planned.size());
        look(nodes, (done, of) -> progress.at(done, steps));
        List<RackFit> racks = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            int before = nodes.size() * (1 + i);
            new RackTrial(planner, basis, candidate, newcomer, planned.get(i))
                    .fit((done, of) -> progress.at(before + nodes.size() * done / of, steps))
                    .ifPresent(racks::add);
        }
        progress.at(steps, steps);
        return new HeadroomMap(newcomer, candidate, !basis.isChosen(), places, spans(), racks);
    }

    /**
     * The nodes at which something may be hung, in the order in which they were cut: along each run but the risers, which
     * nobody taps; along those too where there is nothing else.
     */
    static List<String> onPipe(Basis basis) {
        Set<RunId> risers = basis.room().runs().stream()
                .filter(run -> run.role() == Run.Role.RISER)
                .map(Run::id)
                .collect(Collectors.toSet());
        List<String> nodes = onPipe(basis.piped(), risers);
        return nodes.isEmpty() ? onPipe(basis.piped(), Set.of()) : nodes;
    }

    private static List<String> onPipe(PipedRoom piped, Set<RunId> without) {
        Set<String> nodes = new HashSet<>();
        for (Stretch stretch : piped.stretches()) {
            Pipe pipe = piped.network().pipes().get(stretch.pipe());
            if (!without.contains(stretch.run())) {
                nodes.add(pipe.from());
                nodes.add(pipe.to());
            }
        }
        return piped.network().nodes().stream().filter(nodes::contains).toList();
    }

    private void look(List<String> nodes, Progress progress) {
        Search search = basis.search(candidate, newcomer);
        Set<String> taps = taps(basis.piped().network());
        int guess = 0;
        for (String node : nodes) {
            progress.at(places.size(), nodes.size());
            Fits fits = search.at(node, basis.needed(), guess);
            guess = fits.outlets();
            Spot spot = Objects.requireNonNull(basis.piped().spots().get(node));
            placeOfNode.put(node, places.size());
            places.add(new Place(spot.run().orElseThrow(), spot.alongM(), spot.place(), taps.contains(node), fits));
        }
    }

    private static Set<String> taps(Network network) {
        Set<String> taps = new HashSet<>();
        network.drops().stream().map(Drop::node).forEach(taps::add);
        return taps;
    }

    private List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        for (Stretch stretch : basis.piped().stretches()) {
            Pipe pipe = basis.piped().network().pipes().get(stretch.pipe());
            Integer from = placeOfNode.get(pipe.from());
            Integer to = placeOfNode.get(pipe.to());
            if (from != null && to != null) {
                spans.add(new Span(stretch.run(), stretch.fromM(), stretch.toM(), from, to));
            }
        }
        return spans;
    }
}
