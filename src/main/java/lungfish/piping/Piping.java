package lungfish.piping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Fittings;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Demand;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;

/**
 * Turns a room into a network. Every outlet finds its tap (its own, a gang's, or the nearest point of the pipe), every
 * blower its place on the pipe; the runs are cut there and where they are joined; what lies between becomes pipes.
 */
public final class Piping {
    /** The blower's own check valve, open: a swing check (Munson et al., Fundamentals of Fluid Mechanics, Table 8.2). */
    private static final double BLOWER_CHECK_LOSS = 2.0;

    private final Room room;
    private final Catalogue catalogue;
    private final Conditions conditions;
    private final Layout layout;
    private final PipeWork work;
    private final DropMaker dropMaker;
    private final Map<GangId, String> gangNodes = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private Piping(Room room, Catalogue catalogue) {
        this.room = room;
        this.catalogue = catalogue;
        this.conditions = conditions(Surroundings.of(room, catalogue));
        this.layout = new Layout(room);
        this.work = new PipeWork(layout, catalogue);
        this.dropMaker = new DropMaker(catalogue, conditions.waterDensityKgPerM3());
    }

    /**
     * The network of a room, for the needs of its demand.
     *
     * @param blowers those that feed the pipe together
     * @return empty when the room has no pipe or no outlets: there is nothing to solve
     */
    public static Optional<PipedRoom> of(Room room, Demand demand, List<Blower> blowers, Catalogue catalogue) {
        return of(room, demand, blowers, catalogue, OptionalDouble.empty());
    }

    /**
     * The same network with more nodes along the pipe, for questions about places where nothing is yet.
     *
     * @param everyM no piece of a run is longer; absent: cut only where something leaves or joins
     */
    public static Optional<PipedRoom> of(
            Room room, Demand demand, List<Blower> blowers, Catalogue catalogue, OptionalDouble everyM) {
        if (demand.needs().isEmpty()) {
            return Optional.empty();
        }
        Piping piping = new Piping(room, catalogue);
        everyM.ifPresent(piping.work::cutEvery);
        return piping.layout.isEmpty() ? Optional.empty() : Optional.of(piping.build(demand, blowers));
    }

    private PipedRoom build(Demand demand, List<Blower> blowers) {
        Joints joints = new Joints(layout);
        findings.addAll(joints.findings());
        joints.joints().forEach(work::join);
        List<Need> needs = demand.needs();
        List<String> taps = needs.stream().map(this::tapName).toList();
        List<Stop> feeds = blowers.stream().map(this::feed).toList();
        feeds.forEach(work::stopAt);
        work.cut();
        List<Drop> drops = drops(needs, taps);
        room.gangs().stream().filter(gang -> gangNodes.containsKey(gang.id())).forEach(this::addGang);
        Map<BlowerId, String> blowerNodes = new LinkedHashMap<>();
        for (int i = 0; i < blowers.size(); i++) {
            blowerNodes.put(blowers.get(i).id(), addBlower(blowers.get(i), feeds.get(i)));
        }
        return piped(needs, drops, blowerNodes);
    }

    private PipedRoom piped(List<Need> needs, List<Drop> drops, Map<BlowerId, String> blowerNodes) {
        findings.addAll(work.findings());
        assumptions.addAll(dropMaker.assumptions());
        Network network =
                new Network(conditions, work.nodes(), work.pipes(), drops, List.of(), Optional.of(room.name()));
        List<Double> airlines = drops.stream()
                .map(drop -> drop.airline().orElseThrow().lengthM())
                .toList();
        return new PipedRoom(
                network, needs, blowerNodes, work.spots(), work.stretches(), airlines, findings, assumptions);
    }

    static Conditions conditions(Surroundings surroundings) {
        double temperatureK = surroundings.temperatureK().si();
        Conditions usual = Conditions.usual();
        return new Conditions(
                surroundings.ambientPa(),
                temperatureK,
                temperatureK,
                usual.waterDensityKgPerM3(),
                usual.gravityMPerS2(),
                usual.logTerm(),
                usual.servedBand());
    }

    /** Cuts the pipe where the outlet's air leaves it; the name is that of the node its drop hangs on. */
    private String tapName(Need need) {
        Outlet outlet = need.seat().outlet();
        Optional<Outlet.Tap> tap = outlet.tap();
        if (tap.isPresent() && tap.get() instanceof Outlet.OnGang onGang) {
            return gangName(need, onGang.gang());
        }
        Optional<Stop> own = tap.flatMap(each -> layout.tap((Outlet.OnRun) each));
        if (tap.isPresent() && own.isEmpty()) {
            findings.add(missingTap(need, ((Outlet.OnRun) tap.get()).run().text()));
        }
        return work.stopAt(own.orElseGet(() -> nearest(need.seat().rim())));
    }

    private String gangName(Need need, GangId id) {
        Optional<Gang> gang =
                room.gangs().stream().filter(each -> each.id().equals(id)).findFirst();
        if (gang.isEmpty()) {
            findings.add(missingTap(need, id.text()));
            return work.stopAt(nearest(need.seat().rim()));
        }
        gangNodes.computeIfAbsent(id, absent -> work.stopAt(gangStop(gang.get())));
        return "gang " + id.text();
    }

    private Stop gangStop(Gang gang) {
        return gang.tap().flatMap(layout::tap).orElseGet(() -> nearest(gang.place()));
    }

    private static Finding missingTap(Need need, String wanted) {
        return Finding.of(Code.OUTLET_WITHOUT_TAP, need.id().part()).with("wanted", wanted);
    }

    private Stop nearest(Point point) {
        return layout.nearest(point).orElseThrow().stop();
    }

    private List<Drop> drops(List<Need> needs, List<String> taps) {
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            String node = work.node(taps.get(i));
            drops.add(dropMaker.drop(needs.get(i), node, place(needs.get(i), node)));
        }
        return drops;
    }

    private Point place(Need need, String node) {
        if (need.seat().outlet().tap().orElse(null) instanceof Outlet.OnGang onGang) {
            return room.gangs().stream()
                    .filter(gang -> gang.id().equals(onGang.gang()))
                    .findFirst()
                    .map(Gang::place)
                    .orElseGet(() -> need.seat().rim());
        }
        Spot spot = work.spots().get(node);
        return spot == null ? need.seat().rim() : spot.place();
    }

    private void addGang(Gang gang) {
        String from = work.node(gangNodes.getOrDefault(gang.id(), ""));
        String name = "gang " + gang.id().text();
        work.addNode(name, new Spot(gang.place(), Optional.empty(), 0));
        AirlineSize size = gang.feeder()
                .flatMap(Outlet.Airline::size)
                .map(dropMaker::airline)
                .orElseGet(() -> dropMaker.assumedAirline(gang.id().part()));
        Point tap = work.spots()
                .getOrDefault(from, new Spot(gang.place(), Optional.empty(), 0))
                .place();
        double drawnM = tap.distanceM(gang.place()) * (1 + dropMaker.slack().si());
        double lengthM = gang.feeder()
                .map(Outlet.Airline::lengthM)
                .orElse(OptionalDouble.empty())
                .orElse(drawnM);
        double k = Fittings.ENTRANCE
                + Fittings.EXIT
                + catalogue.assumed(Assumable.GANG_LOSS_FACTOR).si();
        work.addPipe(new Pipe(name, from, name, lengthM, size.boreM(), size.roughnessM(), k));
    }

    private Stop feed(Blower blower) {
        return blower.feeds().flatMap(layout::tap).orElseGet(() -> blower.siting()
                .place()
                .map(this::nearest)
                .orElseGet(() -> new Stop(layout.lines().get(0).run().id(), 0)));
    }

    /** Machines side by side share a node and each has its own check valve and hose to the pipe. */
    private String addBlower(Blower blower, Stop feed) {
        String name = "blower " + blower.id().text();
        String onto = work.node(work.stopAt(feed));
        Point end = layout.at(feed);
        Point place = blower.siting().place().orElse(end);
        work.addNode(name, new Spot(place, Optional.empty(), 0));
        double boreM = blower.fittings()
                .portM()
                .orElse(work.size(layout.line(feed.run()).run()).boreM());
        double k = Fittings.ENTRANCE + BLOWER_CHECK_LOSS + 1;
        double hoseM = hoseM(blower, place.distanceM(end));
        for (int i = 1; i <= blower.count(); i++) {
            work.addPipe(new Pipe(i == 1 ? name : name + " hose " + i, name, onto, hoseM, boreM, 0, k));
        }
        return name;
    }

    private double hoseM(Blower blower, double drawnM) {
        OptionalDouble typed = blower.fittings().hoseM();
        if (typed.isPresent()) {
            return typed.getAsDouble();
        }
        double assumedM = catalogue.assumed(Assumable.HOSE_LENGTH).si();
        double lengthM = Math.max(assumedM, drawnM);
        assumptions.add(new Assumption(
                Assumable.HOSE_LENGTH,
                blower.id().part(),
                "hose from the blower to the pipe",
                lengthM,
                Dimension.LENGTH,
                catalogue.assumed(Assumable.HOSE_LENGTH).source()));
        return lengthM;
    }
}
