package lungfish.network;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A graph of pipes with its drops and sources: any graph, of any number of pieces.
 *
 * @param conditions what holds everywhere
 * @param nodes names, each once
 * @param pipes each between two of the nodes
 * @param drops each at one of the nodes; a node may carry several
 * @param sources each at one of the nodes
 * @param title a line for people
 */
public record Network(
        Conditions conditions,
        List<String> nodes,
        List<Pipe> pipes,
        List<Drop> drops,
        List<Source> sources,
        Optional<String> title) {
    /** Copies the lists, and checks that ids are unique and that every named node exists. */
    public Network {
        nodes = List.copyOf(nodes);
        pipes = List.copyOf(pipes);
        drops = List.copyOf(drops);
        sources = List.copyOf(sources);
        Set<String> known = unique("node", nodes);
        unique("pipe", pipes.stream().map(Pipe::id).toList());
        unique("drop", drops.stream().map(Drop::id).toList());
        unique("source", sources.stream().map(Source::id).toList());
        allKnown(known, pipes.stream().map(Pipe::from).toList());
        allKnown(known, pipes.stream().map(Pipe::to).toList());
        allKnown(known, drops.stream().map(Drop::node).toList());
        allKnown(known, sources.stream().map(Source::node).toList());
    }

    /** The same with other drops (valves turned, depths changed, one added). */
    public Network withDrops(List<Drop> newDrops) {
        return new Network(conditions, nodes, pipes, newDrops, sources, title);
    }

    /** The same with other sources. */
    public Network withSources(List<Source> newSources) {
        return new Network(conditions, nodes, pipes, drops, newSources, title);
    }

    /** The same with other pipes. */
    public Network withPipes(List<Pipe> newPipes) {
        return new Network(conditions, nodes, newPipes, drops, sources, title);
    }

    private static Set<String> unique(String kind, Collection<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException("two of the name " + kind + " '" + id + "'");
            }
        }
        return seen;
    }

    private static void allKnown(Set<String> known, List<String> named) {
        for (String node : named) {
            if (!known.contains(node)) {
                throw new IllegalArgumentException("no node '" + node + "'");
            }
        }
    }
}
