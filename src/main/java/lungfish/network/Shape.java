package lungfish.network;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The names of a network turned into positions: who touches whom, which pipes are ties, which sources are fixed. */
final class Shape {
    final int nodes;
    final int[] pipeFrom;
    final int[] pipeTo;
    final boolean[] tie;
    final int[] dropNode;
    final int[] sourceNode;
    final boolean[] fixed;

    private Shape(Network network) {
        Map<String, Integer> positions = positions(network.nodes());
        nodes = network.nodes().size();
        int pipes = network.pipes().size();
        pipeFrom = new int[pipes];
        pipeTo = new int[pipes];
        tie = new boolean[pipes];
        for (int i = 0; i < pipes; i++) {
            Pipe pipe = network.pipes().get(i);
            pipeFrom[i] = positions.getOrDefault(pipe.from(), -1);
            pipeTo[i] = positions.getOrDefault(pipe.to(), -1);
            tie[i] = pipe.isTie();
        }
        dropNode = network.drops().stream()
                .mapToInt(drop -> positions.getOrDefault(drop.node(), -1))
                .toArray();
        List<Source> sources = network.sources();
        sourceNode = sources.stream()
                .mapToInt(source -> positions.getOrDefault(source.node(), -1))
                .toArray();
        fixed = new boolean[sources.size()];
        for (int i = 0; i < fixed.length; i++) {
            fixed[i] = sources.get(i) instanceof Source.FixedPressure;
        }
    }

    static Shape of(Network network) {
        return new Shape(network);
    }

    private static Map<String, Integer> positions(List<String> names) {
        Map<String, Integer> positions = new HashMap<>(names.size() * 2);
        for (int i = 0; i < names.size(); i++) {
            positions.put(names.get(i), i);
        }
        return positions;
    }

    int pipes() {
        return pipeFrom.length;
    }

    int drops() {
        return dropNode.length;
    }

    int sources() {
        return sourceNode.length;
    }

    /** Whether all that was analysed for one holds for the other. */
    boolean isSameAs(Shape other) {
        return nodes == other.nodes
                && Arrays.equals(pipeFrom, other.pipeFrom)
                && Arrays.equals(pipeTo, other.pipeTo)
                && Arrays.equals(tie, other.tie)
                && Arrays.equals(dropNode, other.dropNode)
                && Arrays.equals(sourceNode, other.sourceNode)
                && Arrays.equals(fixed, other.fixed);
    }
}
