package lungfish.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.piping.PipedRoom;
import lungfish.sizing.Fleet;

/**
 * A room with new blowers and clean devices whose pressure the bleed holds, however its valves stand: what the outlets leave of
 * the blowers' air goes out through the bleed. Where they take more than the blowers give at that pressure, the bleed is shut and
 * the pressure is lower. It is never higher, so that no blower is pushed above it while valves are turned.
 */
final class HeldRoom {
    /** What rounding leaves of no air, as a share of what the blowers give. */
    private static final double NONE_SHARE = 1e-9;

    private final PipedRoom piped;
    private final Fleet fleet;
    private final double holdPa;

    HeldRoom(PipedRoom piped, Fleet fleet, double holdPa) {
        this.piped = piped;
        this.fleet = fleet;
        this.holdPa = holdPa;
    }

    /**
     * How it stands.
     *
     * @param gaugePa the highest at any blower
     * @param bledM3PerS free air that the bleed lets out
     * @param held whether the bleed can hold the pressure
     */
    record Stand(AsSet set, double gaugePa, double bledM3PerS, boolean held) {}

    /** With the valves so; empty where the network cannot be solved then. */
    Optional<Stand> at(double[] valveK) {
        boolean[] isShort = new boolean[fleet.placed().size()];
        Optional<AsSet> set = solved(network(valveK, sources(isShort)));
        while (set.isPresent() && grows(isShort, set.get())) {
            set = solved(network(valveK, sources(isShort)));
        }
        return set.map(found -> stand(found, isShort));
    }

    /** Takes up the places of which more is asked than they give at the held pressure; false where there are no more. */
    private boolean grows(boolean[] isShort, AsSet set) {
        boolean grown = false;
        for (int i = 0; i < isShort.length; i++) {
            if (!isShort[i] && left(i, set) < -NONE_SHARE * fleet.freeAt(holdPa, Wear.NEW)) {
                isShort[i] = true;
                grown = true;
            }
        }
        return grown;
    }

    /** Where the bleed is shut, a blower finds its own pressure; elsewhere the bleed holds it. */
    private List<Source> sources(boolean[] isShort) {
        List<Source> held = fleet.fixedSources(holdPa);
        List<Source> free = fleet.sources(Wear.NEW);
        return IntStream.range(0, isShort.length)
                .mapToObj(i -> isShort[i] ? free.get(i) : held.get(i))
                .toList();
    }

    private double left(int place, AsSet set) {
        return fleet.freeAt(place, holdPa, Wear.NEW) - set.source(place).freeM3PerS();
    }

    private Stand stand(AsSet set, boolean[] isShort) {
        double bled = IntStream.range(0, isShort.length)
                .filter(i -> !isShort[i])
                .mapToDouble(i -> Math.max(0, left(i, set)))
                .sum();
        boolean held = IntStream.range(0, isShort.length).noneMatch(i -> isShort[i]);
        return new Stand(set, highestPa(set), bled, held);
    }

    private double highestPa(AsSet set) {
        return IntStream.range(0, fleet.placed().size())
                .mapToDouble(i -> set.source(i).gaugePa())
                .max()
                .orElse(0);
    }

    private Network network(double[] valveK, List<Source> sources) {
        Network base = piped.network(Upkeep.CLEAN, sources);
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < valveK.length; i++) {
            drops.add(base.drops().get(i).withValveK(valveK[i]));
        }
        return base.withDrops(drops);
    }

    static Optional<AsSet> solved(Network network) {
        return Solver.of(network).asSet().match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }
}
