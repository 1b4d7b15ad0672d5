package lungfish.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.air.FreeAir;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.network.Curve;
import lungfish.network.Source;
import lungfish.room.Blower;

/**
 * The machines that feed the pipe together, each at its node. Bled at its own outlet, each sees one common pressure. Their
 * curves are worked out once, when the fleet is made.
 */
public final class Fleet {
    /** A machine and the node at its outlet. */
    public record Placed(Machine machine, String node) {}

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

    /** The same places taken by machines of another class. */
    public Fleet as(BlowerClass kind) {
        return new Fleet(
                placed.stream()
                        .map(each -> new Placed(each.machine().as(kind), each.node()))
                        .toList(),
                bleed,
                room);
    }

    /** How many machines there are in all. */
    public int machines() {
        return placed.stream().mapToInt(each -> each.machine().count()).sum();
    }

    /** The same fleet with one machine fewer, taken from the last place; empty where it would be the last machine. */
    public Optional<Fleet> withOneFewer() {
        if (machines() <= 1) {
            return Optional.empty();
        }
        List<Placed> fewer = new ArrayList<>(placed);
        Placed last = fewer.remove(fewer.size() - 1);
        if (last.machine().count() > 1) {
            fewer.add(new Placed(last.machine().withCount(last.machine().count() - 1), last.node()));
        }
        return Optional.of(new Fleet(fewer, bleed, room));
    }

    /** The class of the first machine: that of all, where the plan chooses. */
    public BlowerClass kind() {
        return placed.get(0).machine().kind();
    }

    public String name() {
        return placed.get(0).machine().name();
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

    /** The largest pressure that every machine bears all day, at its outlet behind filter and silencer, Pa. */
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
        for (Placed each : placed) {
            Curve curve = each.machine().curve(wear, room);
            sources.add(new Source.Blower(
                    each.machine().part().id(),
                    each.node(),
                    curve,
                    each.machine().count()));
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
