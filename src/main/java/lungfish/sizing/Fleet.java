package lungfish.sizing;

import java.util.ArrayList;
import java.util.List;
import lungfish.air.FreeAir;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.network.Curve;
import lungfish.network.Source;
import lungfish.room.Blower;

/**
 * The machines that feed the pipe together, each at its node. Bled at its own outlet, each sees one common pressure.
 *
 * @param bleed what happens to the air that is left over; the first blower's word counts for all
 */
public record Fleet(List<Placed> placed, Blower.Bleed bleed, FreeAir room) {
    /** A machine and the node at its outlet. */
    public record Placed(Machine machine, String node) {}

    public Fleet {
        placed = List.copyOf(placed);
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

    /** The class of the first machine: that of all, where the plan chooses. */
    public BlowerClass kind() {
        return placed.get(0).machine().kind();
    }

    public String name() {
        return placed.get(0).machine().name();
    }

    /** Free air of all machines at a common gauge pressure, m³/s. */
    public double freeAt(double gaugePa, Wear wear) {
        return placed.stream()
                .mapToDouble(each -> each.machine().count()
                        * each.machine().curve(wear, room).flowAt(gaugePa))
                .sum();
    }

    /** The highest pressure at which any of them still gives air, Pa. */
    public double shutPa(Wear wear) {
        return placed.stream()
                .mapToDouble(each -> each.machine().curve(wear, room).shutGaugePa())
                .max()
                .orElse(0);
    }

    /** Watts of all machines at a common pressure. */
    public double watts(double gaugePa, Wear wear) {
        double sum = 0;
        for (Placed each : placed) {
            Machine machine = each.machine();
            double flow = machine.count() * machine.curve(wear, room).flowAt(gaugePa);
            sum += machine.watts(gaugePa, flow, room);
        }
        return sum;
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
