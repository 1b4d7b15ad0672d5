package lungfish.choice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Tuned;
import lungfish.plan.Basis;

/**
 * What the pipe takes on the way from the blower to each tap. The tubing behind a tap is no pipe: an outlet on a gang counts
 * where its gang's feeder leaves the pipe.
 *
 * @param allPa one for each outlet, the least first
 * @param indexPa on the way to the worst-served outlet
 */
public record TapLosses(List<Double> allPa, double indexPa) {
    public TapLosses {
        allPa = List.copyOf(allPa);
    }

    static TapLosses of(Basis basis) {
        Tuned tuned = basis.needed().tuned();
        Network network = tuned.network();
        Map<String, Double> gaugePa = new HashMap<>();
        for (int i = 0; i < network.nodes().size(); i++) {
            gaugePa.put(network.nodes().get(i), tuned.nodeGaugePa(i));
        }
        Map<String, String> feeders = new HashMap<>();
        basis.piped().spots().forEach((node, spot) -> {
            if (spot.run().isEmpty()) {
                network.pipes().stream()
                        .filter(pipe -> pipe.to().equals(node))
                        .map(Pipe::from)
                        .forEach(tap -> feeders.put(node, tap));
            }
        });
        List<Double> losses = network.drops().stream()
                .map(drop -> feeders.getOrDefault(drop.node(), drop.node()))
                .map(tap -> basis.needed().pressurePa() - gaugePa.getOrDefault(tap, 0.0))
                .toList();
        return new TapLosses(losses.stream().sorted().toList(), losses.get(tuned.indexDrop()));
    }

    public double bestPa() {
        return allPa.get(0);
    }

    public double worstPa() {
        return allPa.get(allPa.size() - 1);
    }
}
