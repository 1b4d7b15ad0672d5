package lungfish.siphon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds the worst way to every end by letting the water rise. A way from a tank to an end is as high as its highest place;
 * of all ways through a pipe with loops, water takes the one whose highest place is lowest (the bottleneck path, which lies
 * in a spanning tree grown from the least edges up: T. C. Hu, Operations Research 9(6), 1961, p. 898, from memory). So the
 * places are opened from the lowest up: at each height the pieces that it joins become one group, and within it every source
 * reaches every end over just that height, unless it did so lower down. A pair is looked at once, where it first comes
 * together; a group keeps its sources with the highest line first, and an end looks only at those that can be worse for it
 * than what it knows: hundreds of outlets on one level pipe are one group at one height.
 */
final class Rising {
    /** Water lines closer than this count as level. */
    static final double LEVEL_M = 0.02;

    /** Heights are sorted into steps of this, so that a pipe meant to be level is. */
    private static final double STEPS_PER_M = 1000;

    private final Waterways open;
    private final List<Reached> ends;
    private final int[] parent;
    private final @Nullable Group[] groups;
    private final Known[] known;

    /** A height, and the two nodes that it joins; the same one where it only opens. */
    private record Opening(long step, int from, int to) {}

    Rising(Waterways open) {
        this.open = open;
        this.ends = ends(open);
        this.parent = IntStream.range(0, open.places().size()).toArray();
        this.groups = new Group[parent.length];
        this.known = ends.stream().map(Known::new).toArray(Known[]::new);
        hang();
        rise();
    }

    private static List<Reached> ends(Waterways open) {
        Stream<Reached> outlets = open.outlets().stream()
                .map(hung -> new Reached.ByOutlet(
                        hung.need().seat(), hung.need().depthM().si()));
        Stream<Reached> machines =
                open.machines().stream().map(each -> new Reached.AtMachine(each.machine(), each.place()));
        return Stream.concat(outlets, machines).toList();
    }

    private void hang() {
        for (int i = 0; i < open.outlets().size(); i++) {
            Waterways.Hung hung = open.outlets().get(i);
            Group group = groupAt(hung.node());
            group.addEnd(i);
            if (!Leaving.isHeld(hung.need().seat().outlet())) {
                group.addSource(Group.Source.of(Leaving.of(hung.need()), i));
            }
        }
        for (int i = 0; i < open.machines().size(); i++) {
            groupAt(open.machines().get(i).node()).addEnd(open.outlets().size() + i);
        }
    }

    private Group groupAt(int node) {
        Group there = groups[node];
        if (there == null) {
            there = new Group();
            groups[node] = there;
        }
        return there;
    }

    private void rise() {
        List<Opening> openings = openings();
        int next = 0;
        while (next < openings.size()) {
            long step = openings.get(next).step();
            int first = next;
            while (next < openings.size() && openings.get(next).step() == step) {
                join(openings.get(next).from(), openings.get(next).to());
                next++;
            }
            look(openings.subList(first, next), step / STEPS_PER_M);
        }
    }

    private List<Opening> openings() {
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i < groups.length; i++) {
            if (groups[i] != null) {
                openings.add(new Opening(step(open.places().get(i).zM()), i, i));
            }
        }
        open.links().forEach(link -> openings.add(new Opening(step(link.crestM()), link.from(), link.to())));
        openings.sort(Comparator.comparingLong(Opening::step));
        return openings;
    }

    private static long step(double heightM) {
        return Math.round(heightM * STEPS_PER_M);
    }

    private int root(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    private void join(int one, int other) {
        int a = root(one);
        int b = root(other);
        if (a == b) {
            return;
        }
        Group first = groups[a];
        Group second = groups[b];
        boolean isSmaller = first == null || (second != null && first.size() < second.size());
        int stays = isSmaller ? b : a;
        int goes = isSmaller ? a : b;
        parent[goes] = stays;
        if (first != null && second != null) {
            groupAt(stays).takeIn(groupAt(goes));
        }
        groups[goes] = null;
    }

    private void look(List<Opening> opened, double crestM) {
        opened.stream().mapToInt(each -> root(each.from())).distinct().forEach(root -> {
            Group group = groups[root];
            if (group != null) {
                group.look((end, sources) -> known[end].lookAt(sources, crestM));
            }
        });
    }

    /** The worst way to each end that water can reach, in the order of the ends. */
    List<Way> ways() {
        return Stream.of(known).flatMap(each -> each.worst().stream()).toList();
    }

    /** The outlets by which water can leave its tank, in the order drawn. */
    List<Leaving> leaving() {
        SortedMap<Integer, Leaving> leaving = new TreeMap<>();
        Stream.of(groups).filter(Objects::nonNull).forEach(group -> {
            double lowest = group.ends().stream()
                    .mapToDouble(end -> ends.get(end).lineM())
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            group.sources().stream()
                    .filter(source -> source.lineM() > lowest + LEVEL_M)
                    .forEach(source -> leaving.put(source.number(), source.leaving()));
        });
        return List.copyOf(leaving.values());
    }
}
