package lungfish.outage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lungfish.air.Fittings;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Stretch;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/** A network of which something is broken. */
final class Broken {
    private final Network network;
    private final PipedRoom piped;

    Broken(Network network, PipedRoom piped) {
        this.network = network;
        this.piped = piped;
    }

    /** The network once this is broken; the same where it is nothing of the pipe. */
    Network by(Optional<Failing> what) {
        Failing failing = what.orElse(null);
        if (failing instanceof Failing.BranchShut shut) {
            return without(shut.run());
        }
        if (failing instanceof Failing.CheckValveStuck stuck) {
            return drop(stuck.outlet(), drop -> drop.withValveK(Drop.SHUT_K));
        }
        if (failing instanceof Failing.AirlineOff off) {
            return drop(off.outlet(), Broken::openEnd);
        }
        if (failing instanceof Failing.HoseOff off) {
            return hoseOff(off.blower());
        }
        return network;
    }

    private Network drop(OutletId outlet, UnaryOperator<Drop> change) {
        return network.withDrops(network.drops().stream()
                .map(drop -> drop.id().equals(outlet.text()) ? change.apply(drop) : drop)
                .toList());
    }

    /** What is left of a drop whose airline has slipped off at the valve: the valve, and the open air behind it. */
    private static Drop openEnd(Drop drop) {
        return new Drop(
                drop.id(),
                drop.node(),
                drop.valveK(),
                drop.valveKOpen(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty());
    }

    /** Whether a drop ends in the open air: what it takes reaches no tank. */
    static boolean isOpenEnd(Drop drop) {
        return drop.airline().isEmpty() && drop.device().isEmpty() && drop.depthM() == 0;
    }

    /** Its end lies open to the room: an exit of the hose's own bore. */
    private Network hoseOff(BlowerId blower) {
        String node = piped.blowerNodes().get(blower);
        Optional<Pipe> hose = network.pipes().stream()
                .filter(pipe -> pipe.from().equals(node))
                .findFirst();
        if (node == null || hose.isEmpty()) {
            return network;
        }
        double areaM2 = Math.PI / 4 * hose.get().boreM() * hose.get().boreM();
        double k = Fittings.EXIT / (2 * areaM2 * areaM2);
        List<Drop> drops = new ArrayList<>(network.drops());
        drops.add(openEnd(new Drop(
                "hose off " + blower.text(),
                node,
                k,
                k,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty())));
        return network.withDrops(drops);
    }

    /** The run is gone, and what no source reaches any more. A tee stays with the other run that it belongs to. */
    private Network without(RunId run) {
        Map<Integer, RunId> runs =
                piped.stretches().stream().collect(Collectors.toMap(Stretch::pipe, Stretch::run, (one, other) -> one));
        List<Pipe> left = new ArrayList<>();
        Set<String> ofOthers = new HashSet<>();
        for (int i = 0; i < network.pipes().size(); i++) {
            Pipe pipe = network.pipes().get(i);
            RunId of = runs.get(i);
            if (!run.equals(of)) {
                left.add(pipe);
            }
            if (of != null && !of.equals(run)) {
                ofOthers.addAll(List.of(pipe.from(), pipe.to()));
            }
        }
        left.removeIf(pipe -> isGone(pipe.from(), run, ofOthers) || isGone(pipe.to(), run, ofOthers));
        return only(reached(left), left);
    }

    /** Whether a node lies on this run, and on no other. */
    private boolean isGone(String node, RunId run, Set<String> ofOthers) {
        return !ofOthers.contains(node)
                && Optional.ofNullable(piped.spots().get(node))
                        .flatMap(spot -> spot.run())
                        .filter(run::equals)
                        .isPresent();
    }

    private Network only(Set<String> fed, List<Pipe> left) {
        return new Network(
                network.conditions(),
                network.nodes().stream().filter(fed::contains).toList(),
                left.stream()
                        .filter(pipe -> fed.contains(pipe.from()) && fed.contains(pipe.to()))
                        .toList(),
                network.drops().stream()
                        .filter(drop -> fed.contains(drop.node()))
                        .toList(),
                network.sources().stream()
                        .filter(source -> fed.contains(source.node()))
                        .toList(),
                network.title());
    }

    private Set<String> reached(List<Pipe> pipes) {
        Map<String, List<String>> beside = new HashMap<>();
        for (Pipe pipe : pipes) {
            beside.computeIfAbsent(pipe.from(), each -> new ArrayList<>()).add(pipe.to());
            beside.computeIfAbsent(pipe.to(), each -> new ArrayList<>()).add(pipe.from());
        }
        Set<String> reached = new HashSet<>();
        Deque<String> next = new ArrayDeque<>();
        network.sources().forEach(source -> next.add(source.node()));
        while (!next.isEmpty()) {
            String node = next.remove();
            if (reached.add(node)) {
                next.addAll(beside.getOrDefault(node, List.of()));
            }
        }
        return reached;
    }
}
