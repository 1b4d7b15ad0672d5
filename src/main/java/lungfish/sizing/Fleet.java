package lungfish.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.air.FreeAir;
import lungfish.blower.Accessories;
import lungfish.blower.Discharge;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.network.AsSet;
import lungfish.network.Curve;
import lungfish.network.Source;
import lungfish.room.Blower;

/**
 * The machines that feed the pipe together, each at its node. Bled at its own outlet, each sees one common pressure. Their
 * curves are worked out once, when the fleet is made.
 */
public final class Fleet {
    /**
     * A machine and the node at its outlet.
     *
     * @param named whether the room names this machine, so that no candidate takes its place
     */
    public record Placed(Machine machine, String node, boolean named) {
        /** A place that is open to every candidate. */
        public Placed(Machine machine, String node) {
            this(machine, node, false);
        }

        private Placed with(Machine other) {
            return new Placed(other, node, named);
        }
    }

    /** Share of all the air below which a machine counts as giving none. */
    private static final double HARDLY_ANY = 0.05;

    private final List<Placed> placed;
    private final Blower.Bleed bleed;
    private final FreeAir room;
    private final List<Curve> fresh;
    private final List<Curve> tired;

    /**
     * A fleet of one machine or more.
     *
     * @param bleed what happens to the air that is left over; one word counts for all
     */
    public Fleet(List<Placed> placed, Blower.Bleed bleed, FreeAir room) {
        this.placed = List.copyOf(placed);
        this.bleed = bleed;
        this.room = room;
        this.fresh = curves(Wear.NEW);
        this.tired = curves(Wear.TIRED);
    }

    private List<Curve> curves(Wear wear) {
        return placed.stream().map(each -> each.machine().curve(wear, room)).toList();
    }

    public List<Placed> placed() {
        return placed;
    }

    public Blower.Bleed bleed() {
        return bleed;
    }

    /** The state at which this fleet's free air is counted. */
    public FreeAir room() {
        return room;
    }

    private Curve curve(int i, Wear wear) {
        return switch (wear) {
            case NEW -> fresh.get(i);
            case TIRED -> tired.get(i);
        };
    }

    /** The open places taken by machines of another class; all places, where the room names every machine itself. */
    public Fleet as(BlowerClass kind) {
        return new Fleet(
                placed.stream()
                        .map(each -> isOpen(each) ? each.with(each.machine().as(kind)) : each)
                        .toList(),
                bleed,
                room);
    }

    private boolean isOpen(Placed place) {
        return !place.named() || placed.stream().allMatch(Placed::named);
    }

    /** How many machines another class would have to give. */
    public int openMachines() {
        return placed.stream()
                .filter(this::isOpen)
                .mapToInt(each -> each.machine().count())
                .sum();
    }

    /** The same machines, each of a class that differs somewhat. */
    public Fleet with(UnaryOperator<BlowerClass> change) {
        return each(machine -> machine.as(change.apply(machine.kind())));
    }

    /** The same machines, each behind filters and silencers that differ somewhat. */
    public Fleet fitted(UnaryOperator<Accessories> change) {
        return each(machine -> machine.fitted(change.apply(machine.accessories())));
    }

    private Fleet each(UnaryOperator<Machine> change) {
        return new Fleet(
                placed.stream()
                        .map(place -> place.with(change.apply(place.machine())))
                        .toList(),
                bleed,
                room);
    }

    /** How many machines there are in all. */
    public int machines() {
        return placed.stream().mapToInt(each -> each.machine().count()).sum();
    }

    /** A fleet with one machine fewer, and the machine that is gone. */
    public record Fewer(Machine gone, Fleet left) {}

    /** The same fleet with one machine fewer, taken from each place in turn; none where it would be the last machine. */
    public List<Fewer> withOneFewer() {
        return machines() <= 1
                ? List.of()
                : IntStream.range(0, placed.size()).mapToObj(this::without).toList();
    }

    private Fewer without(int place) {
        List<Placed> fewer = new ArrayList<>(placed);
        Placed from = fewer.remove(place);
        if (from.machine().count() > 1) {
            fewer.add(place, from.with(from.machine().withCount(from.machine().count() - 1)));
        }
        return new Fewer(from.machine(), new Fleet(fewer, bleed, room));
    }

    /** The class of the first open place: that of all of them, where the plan chooses; else of the first machine. */
    public BlowerClass kind() {
        return placed.stream()
                .filter(each -> !each.named())
                .findFirst()
                .orElse(placed.get(0))
                .machine()
                .kind();
    }

    /** All its machines by class, and how many of each: "4 × Rotary vane blower, 60 m³/h", several with "and" between. */
    public String name() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        placed.forEach(
                each -> counts.merge(each.machine().name(), each.machine().count(), Integer::sum));
        return counts.entrySet().stream()
                .map(each -> (each.getValue() > 1 ? each.getValue() + " × " : "") + each.getKey())
                .collect(Collectors.joining(" and "));
    }

    /** What the machines cost to buy, without what is fitted to them. */
    public double price() {
        return placed.stream()
                .map(Placed::machine)
                .mapToDouble(machine -> machine.count() * machine.kind().price())
                .sum();
    }

    /** Free air of all machines at a common gauge pressure, m³/s. */
    public double freeAt(double gaugePa, Wear wear) {
        double sum = 0;
        for (int i = 0; i < placed.size(); i++) {
            sum += freeAt(i, gaugePa, wear);
        }
        return sum;
    }

    /** Free air of the machines at one place, m³/s. */
    public double freeAt(int place, double gaugePa, Wear wear) {
        return placed.get(place).machine().count() * curve(place, wear).flowAt(gaugePa);
    }

    /** The highest pressure at which any of them still gives air, Pa. */
    public double shutPa(Wear wear) {
        return IntStream.range(0, placed.size())
                .mapToDouble(i -> curve(i, wear).shutGaugePa())
                .max()
                .orElse(0);
    }

    /** Watts of all machines at a common pressure. */
    public double watts(double gaugePa, Wear wear) {
        double sum = 0;
        for (int i = 0; i < placed.size(); i++) {
            sum += watts(i, gaugePa, wear);
        }
        return sum;
    }

    /** Watts of the machines at one place. */
    public double watts(int place, double gaugePa, Wear wear) {
        return placed.get(place).machine().watts(gaugePa, freeAt(place, gaugePa, wear), room);
    }

    /** Whether the points of every curve reach this pressure. */
    public boolean isInside(double gaugePa, Wear wear) {
        return IntStream.range(0, placed.size()).allMatch(i -> curve(i, wear).isInside(gaugePa));
    }

    /**
     * The machine that a common pressure holds furthest above what it bears all day, if one is: what filter and silencer
     * take is pressure for the machine too.
     */
    public Optional<Limit.Broken> overRating(double gaugePa, Wear wear) {
        return IntStream.range(0, placed.size())
                .mapToObj(i -> Limit.RATING.broken(
                        placed.get(i).machine().machinePa(gaugePa, freeAt(i, gaugePa, wear)),
                        placed.get(i).machine().kind().continuousPa()))
                .filter(held -> held.foundSi() > held.allowedSi())
                .max(Comparator.comparingDouble(Limit.Broken::share));
    }

    /** The pressure inside the machines at one place, once the network is solved: filter and silencer add to it, Pa. */
    public double insidePa(int place, AsSet set) {
        return placed.get(place)
                .machine()
                .machinePa(
                        set.source(place).gaugePa(),
                        Math.max(0, set.source(place).freeM3PerS()));
    }

    /** How hot the air leaves the hottest of the machines; one that gives hardly any warms no pipe and is left out. */
    public Discharge discharge(double gaugePa, Wear wear) {
        double least = HARDLY_ANY * freeAt(gaugePa, wear);
        return IntStream.range(0, placed.size())
                .filter(i -> freeAt(i, gaugePa, wear) >= least)
                .mapToObj(i -> Discharge.at(
                        placed.get(i).machine(), gaugePa, freeAt(i, gaugePa, wear), watts(i, gaugePa, wear), room))
                .max(Comparator.comparingDouble(Discharge::hotK))
                .orElseThrow();
    }

    /** The largest pressure that every machine bears all day, Pa. */
    public double continuousPa() {
        return placed.stream()
                .mapToDouble(each -> each.machine().kind().continuousPa())
                .min()
                .orElse(0);
    }

    /** Flow that must always pass, m³/s. */
    public double leastM3PerS() {
        return placed.stream().mapToDouble(each -> each.machine().leastM3PerS()).sum();
    }

    /** The sources of the network, as they are now. */
    public List<Source> sources(Wear wear) {
        List<Source> sources = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            Machine machine = placed.get(i).machine();
            String node = placed.get(i).node();
            sources.add(new Source.Blower(machine.part().id(), node, curve(i, wear), machine.count()));
        }
        return sources;
    }

    /** Sources that give any flow at one pressure, in the same places. */
    public List<Source> fixedSources(double gaugePa) {
        List<Source> sources = new ArrayList<>();
        for (Placed each : placed) {
            sources.add(new Source.FixedPressure(each.machine().part().id(), each.node(), gaugePa));
        }
        return sources;
    }
}
