package lungfish.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import lungfish.air.Tube;
import lungfish.network.Network;
import lungfish.network.Solved;

/**
 * How fast the air goes where it goes fastest.
 *
 * @param metresPerS mean over the bore
 * @param pipe position in the network's list of pipes
 */
public record AirSpeed(double metresPerS, int pipe) {
    /** Above this the loss law's left-out term begins to show; our own, see decision 1. */
    public static final double FAST_M_PER_S = 20;

    public boolean isFast() {
        return metresPerS > FAST_M_PER_S;
    }

    /** The fastest air in these pipes of a solved network; 0 where there are none. */
    public static AirSpeed of(Solved solved, IntPredicate pipes) {
        Network network = solved.network();
        Map<String, Integer> nodes = new HashMap<>();
        network.nodes().forEach(node -> nodes.put(node, nodes.size()));
        AirSpeed fastest = new AirSpeed(0, 0);
        for (int i = 0; i < network.pipes().size(); i++) {
            double fromPa =
                    solved.nodeGaugePa(nodes.getOrDefault(network.pipes().get(i).from(), 0));
            double speed = pipes.test(i) ? metresPerS(solved, i, fromPa) : 0;
            fastest = speed > fastest.metresPerS() ? new AirSpeed(speed, i) : fastest;
        }
        return fastest;
    }

    /** At the lower of its two pressures, where the air is thinnest. */
    private static double metresPerS(Solved solved, int pipe, double fromPa) {
        Network network = solved.network();
        double toPa = fromPa - solved.pipe(pipe).dropPa();
        double ambient = network.conditions().ambientPa();
        double thinning = ambient / (ambient + Math.min(fromPa, toPa));
        return Math.abs(solved.pipe(pipe).freeM3PerS())
                * thinning
                / Tube.areaM2(network.pipes().get(pipe).boreM());
    }
}
