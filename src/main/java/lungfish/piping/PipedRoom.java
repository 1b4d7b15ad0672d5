package lungfish.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lungfish.catalogue.DeviceClass;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Source;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.room.BlowerId;

/**
 * A room as a network, and the way back. Drop {@code i} of the network is need {@code i}; sources are put in by whoever
 * knows the blower.
 *
 * @param network without sources; devices due for cleaning
 * @param needs in the order of the network's drops
 * @param blowerNodes the node at each blower's outlet, in the order drawn
 * @param spots where each node is in the room
 * @param stretches which part of which run a pipe stands for; pipes that are hoses or feeders have none
 * @param airlineM length of each drop's airline
 */
public record PipedRoom(
        Network network,
        List<Need> needs,
        Map<BlowerId, String> blowerNodes,
        Map<String, Spot> spots,
        List<Stretch> stretches,
        List<Double> airlineM,
        List<Finding> findings,
        List<Assumption> assumptions) {
    public PipedRoom {
        needs = List.copyOf(needs);
        stretches = List.copyOf(stretches);
        airlineM = List.copyOf(airlineM);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** The network with its devices in a state, fed by these sources. */
    public Network network(Upkeep upkeep, List<Source> sources) {
        Network devices = upkeep == Upkeep.DUE ? network : network.withDrops(drops(upkeep));
        return devices.withSources(sources);
    }

    private List<Drop> drops(Upkeep upkeep) {
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            drops.add(inState(network.drops().get(i), needs.get(i), upkeep));
        }
        return drops;
    }

    /** A drop of a need with its device in a state. */
    public Drop inState(Drop drop, Need need, Upkeep upkeep) {
        return drop.withDevice(DropMaker.device(need.resistance(upkeep)));
    }

    /** A drop of a need at another depth below the water line of the need's tank. */
    public Drop atDepth(Drop drop, Need need, double depthM) {
        return drop.withDepth(
                depthM * need.waterDensityKgPerM3() / network.conditions().waterDensityKgPerM3());
    }

    /**
     * A drop with another device, at another depth.
     *
     * @param drop that of the need, in any state of this network
     * @param depthM below the water line of the need's tank
     */
    public Drop otherwise(Drop drop, Need need, DeviceClass device, double depthM) {
        return atDepth(drop.withDevice(DropMaker.device(device.due())), need, depthM);
    }

    /** These drops, in the order of the needs, with some of them hung at one node. */
    public List<Drop> rehung(List<Drop> drops, Predicate<Need> which, String node) {
        List<Drop> all = new ArrayList<>(drops);
        for (int i = 0; i < needs.size(); i++) {
            if (which.test(needs.get(i))) {
                all.set(i, all.get(i).hungAt(node));
            }
        }
        return all;
    }

    /** The same room with some of its outlets hung at one node, on the airlines that they have. */
    public PipedRoom rehung(Predicate<Need> which, String node) {
        return new PipedRoom(
                network.withDrops(rehung(network.drops(), which, node)),
                needs,
                blowerNodes,
                spots,
                stretches,
                airlineM,
                findings,
                assumptions);
    }

    /** The stretch of a run that a pipe stands for. */
    public Optional<Stretch> stretch(int pipe) {
        return stretches.stream().filter(stretch -> stretch.pipe() == pipe).findFirst();
    }
}
