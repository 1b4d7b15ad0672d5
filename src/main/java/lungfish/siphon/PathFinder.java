package lungfish.siphon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import lungfish.room.Point;
import lungfish.room.Seat;
import org.jspecify.annotations.Nullable;

/** Finds the shortest course of a way among those that rise no higher than its crest (E. W. Dijkstra, 1959). */
final class PathFinder {
    /** A detour that nobody draws. */
    private static final double STRAIGHT_M = 1e-6;

    private final Waterways open;
    private final Way way;
    private final Map<Integer, List<Link>> linksAt = new HashMap<>();
    private final double[] lengthM;
    private final @Nullable Link[] by;

    /** A node, and how long the way to it is. */
    private record Come(int node, double lengthM) {}

    PathFinder(Waterways open, Way way) {
        this.open = open;
        this.way = way;
        this.lengthM = new double[open.places().size()];
        this.by = new Link[lengthM.length];
        Arrays.fill(lengthM, Double.POSITIVE_INFINITY);
        open.links().stream().filter(this::isLowEnough).forEach(link -> {
            linksAt.computeIfAbsent(link.from(), at -> new ArrayList<>()).add(link);
            linksAt.computeIfAbsent(link.to(), at -> new ArrayList<>()).add(link);
        });
    }

    private boolean isLowEnough(Link link) {
        return link.crestM() <= way.crestM() + 2 * Way.SAME_M; // crests are steps of a millimetre
    }

    WaterPath path() {
        int first = node(way.from().outlet());
        int last = way.into() instanceof Reached.ByOutlet into ? node(into.outlet()) : machineNode();
        List<Point> behindRim = new ArrayList<>(pipe(first, last));
        behindRim.addAll(end());
        Point crest =
                behindRim.stream().max(Comparator.comparingDouble(Point::zM)).orElseThrow();
        List<Point> all =
                new ArrayList<>(List.of(release(way.from().outlet(), way.from().depthM())));
        all.add(way.from().rim());
        all.addAll(behindRim);
        return new WaterPath(corners(all), crest);
    }

    private int node(Seat seat) {
        return open.outlets().stream()
                .filter(hung -> hung.need().id().equals(seat.outlet().id()))
                .findFirst()
                .orElseThrow()
                .node();
    }

    private int machineNode() {
        return open.machines().stream()
                .filter(each -> each.machine().id().part().equals(way.into().part()))
                .findFirst()
                .orElseThrow()
                .node();
    }

    private List<Point> end() {
        if (way.into() instanceof Reached.ByOutlet into) {
            return List.of(into.outlet().rim(), release(into.outlet(), into.depthM()));
        }
        return List.of(((Reached.AtMachine) way.into()).place());
    }

    private static Point release(Seat seat, double depthM) {
        Point rim = seat.rim();
        return new Point(rim.xM(), rim.yM(), seat.waterLineM() - depthM);
    }

    private List<Point> pipe(int first, int last) {
        PriorityQueue<Come> next = new PriorityQueue<>(Comparator.comparingDouble(Come::lengthM));
        lengthM[first] = 0;
        next.add(new Come(first, 0));
        while (!next.isEmpty()) {
            Come come = next.remove();
            if (come.node() == last) {
                break;
            }
            if (come.lengthM() <= lengthM[come.node()]) {
                linksAt.getOrDefault(come.node(), List.of()).forEach(link -> go(come, link, next));
            }
        }
        return walked(first, last);
    }

    private void go(Come come, Link link, PriorityQueue<Come> next) {
        int other = link.from() == come.node() ? link.to() : link.from();
        double length = come.lengthM() + link.lengthM();
        if (length < lengthM[other]) {
            lengthM[other] = length;
            by[other] = link;
            next.add(new Come(other, length));
        }
    }

    private List<Point> walked(int first, int last) {
        List<Point> back = new ArrayList<>(List.of(open.places().get(last)));
        int at = last;
        Link link = by[at];
        while (at != first && link != null) {
            List<Point> points = new ArrayList<>(link.points());
            if (link.to() == at) {
                Collections.reverse(points);
            }
            back.addAll(points);
            at = link.to() == at ? link.from() : link.to();
            link = by[at];
        }
        Collections.reverse(back);
        return back;
    }

    /** Without repeats, and without what lies on the straight between its neighbours. */
    private static List<Point> corners(List<Point> points) {
        List<Point> kept = new ArrayList<>();
        for (Point point : points) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distanceM(point) > Way.SAME_M) {
                while (kept.size() > 1 && isBetween(kept, point)) {
                    kept.remove(kept.size() - 1);
                }
                kept.add(point);
            }
        }
        return kept;
    }

    private static boolean isBetween(List<Point> kept, Point next) {
        Point before = kept.get(kept.size() - 2);
        Point middle = kept.get(kept.size() - 1);
        return before.distanceM(middle) + middle.distanceM(next) - before.distanceM(next) < STRAIGHT_M;
    }
}
