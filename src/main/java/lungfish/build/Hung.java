package lungfish.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import lungfish.demand.Need;
import lungfish.network.Drop;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Spot;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.RunId;
import org.jspecify.annotations.Nullable;

/** What hangs on the pipe and where: taps, hoses, feeders, and how far the air goes to each outlet. */
final class Hung {
    private final Room room;
    private final PipedRoom piped;
    private final Map<String, Double> wayM;

    Hung(Room room, PipedRoom piped) {
        this.room = room;
        this.piped = piped;
        this.wayM = ways();
    }

    /** Where the hoses of the blowers come to the pipe. */
    List<Outlet.OnRun> feeds() {
        return hoses().stream()
                .map(hose -> piped.spots().get(hose.to()))
                .filter(spot -> spot != null && spot.run().isPresent())
                .map(spot -> new Outlet.OnRun(spot.run().orElseThrow(), spot.alongM()))
                .distinct()
                .toList();
    }

    /** The hoses of the blowers, one a machine. */
    List<Pipe> hoses() {
        return piped.network().pipes().stream()
                .filter(pipe -> piped.blowerNodes().containsValue(pipe.from()))
                .toList();
    }

    /** The run that a node lies on. */
    Optional<RunId> run(String node) {
        return Optional.ofNullable(piped.spots().get(node)).flatMap(Spot::run);
    }

    /** The tubing from its tap to a gang; empty where nothing hangs on it. */
    Optional<Pipe> feeder(GangId gang) {
        String node = "gang " + gang.text();
        return piped.network().pipes().stream()
                .filter(pipe -> pipe.id().equals(node) && pipe.to().equals(node))
                .findFirst();
    }

    /** How far the air goes from the nearest blower to the tap of a need, along pipe and tubing, m. */
    double wayM(int need) {
        Drop drop = piped.network().drops().get(need);
        return wayM.getOrDefault(drop.node(), 0.0) + piped.airlineM().get(need);
    }

    /** Shortest ways from the blowers to every node (Dijkstra). */
    private Map<String, Double> ways() {
        Map<String, Double> way = new HashMap<>();
        PriorityQueue<Map.Entry<String, Double>> next = new PriorityQueue<>(Map.Entry.comparingByValue());
        piped.blowerNodes().values().forEach(node -> next.add(Map.entry(node, 0.0)));
        while (!next.isEmpty()) {
            Map.Entry<String, Double> nearest = next.remove();
            if (way.putIfAbsent(nearest.getKey(), nearest.getValue()) == null) {
                piped.network().pipes().forEach(pipe -> step(pipe, nearest, next));
            }
        }
        return way;
    }

    private static void step(Pipe pipe, Map.Entry<String, Double> from, PriorityQueue<Map.Entry<String, Double>> next) {
        double there = from.getValue() + pipe.lengthM();
        if (pipe.from().equals(from.getKey())) {
            next.add(Map.entry(pipe.to(), there));
        } else if (pipe.to().equals(from.getKey())) {
            next.add(Map.entry(pipe.from(), there));
        }
    }

    /** The places of the taps, along each run in the order drawn; those that fall together are one. */
    List<TapPlace> taps() {
        Map<GangId, List<OutletId>> gangs = new LinkedHashMap<>();
        List<TapPlace> single = new ArrayList<>();
        for (int i = 0; i < piped.needs().size(); i++) {
            Need need = piped.needs().get(i);
            if (tap(need) instanceof Outlet.OnGang onGang
                    && feeder(onGang.gang()).isPresent()) {
                gangs.computeIfAbsent(onGang.gang(), absent -> new ArrayList<>())
                        .add(need.id());
            } else {
                Drop drop = piped.network().drops().get(i);
                place(drop.node(), List.of(need.id()), Optional.empty(), boreM(drop), tap(need) != null)
                        .ifPresent(single::add);
            }
        }
        List<TapPlace> all = new ArrayList<>(grouped(single));
        gangs.forEach((gang, outlets) -> gangTap(gang, outlets).ifPresent(all::add));
        all.sort(Comparator.comparingInt((TapPlace tap) -> order(tap)).thenComparingDouble(TapPlace::alongM));
        return all;
    }

    private static double boreM(Drop drop) {
        return drop.airline().map(tubing -> tubing.boreM()).orElse(0.0);
    }

    private static Outlet.@Nullable Tap tap(Need need) {
        return need.seat().outlet().tap().orElse(null);
    }

    private Optional<TapPlace> gangTap(GangId gang, List<OutletId> outlets) {
        boolean typed = room.gangs().stream()
                .filter(each -> each.id().equals(gang))
                .anyMatch(each -> each.tap().isPresent());
        return feeder(gang).flatMap(pipe -> place(pipe.from(), outlets, Optional.of(gang), pipe.boreM(), typed));
    }

    private Optional<TapPlace> place(
            String node, List<OutletId> outlets, Optional<GangId> gang, double boreM, boolean typed) {
        Spot spot = piped.spots().get(node);
        return spot == null
                ? Optional.empty()
                : spot.run().map(run -> new TapPlace(run, spot.alongM(), outlets, gang, boreM, typed));
    }

    private int order(TapPlace tap) {
        for (int i = 0; i < room.runs().size(); i++) {
            if (room.runs().get(i).id().equals(tap.run())) {
                return i;
            }
        }
        return room.runs().size();
    }

    /** Taps so close that their holes must stand side by side become one place, in the middle of them. */
    private List<TapPlace> grouped(List<TapPlace> single) {
        List<TapPlace> sorted = new ArrayList<>(single);
        sorted.sort(Comparator.comparingInt((TapPlace tap) -> order(tap)).thenComparingDouble(TapPlace::alongM));
        Deque<TapPlace> places = new ArrayDeque<>();
        for (TapPlace tap : sorted) {
            TapPlace whole = tap;
            while (!places.isEmpty() && places.getLast().touches(whole)) {
                whole = places.removeLast().with(whole);
            }
            places.addLast(whole);
        }
        return List.copyOf(places);
    }
}
