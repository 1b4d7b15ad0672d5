package lungfish.measured;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.blower.Wear;
import lungfish.measured.OutletLaw.Off;
import lungfish.measured.Unknowns.Felt;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;

/** Holds what was read today against states of the room. */
final class Rows {
    private final Start start;
    private final Unknowns unknowns;
    private final Sections sections;
    private final Jars jars;
    private final Forward forward;
    private final Openings openings;

    Rows(Start start, Unknowns unknowns, Sections sections) {
        this.start = start;
        this.unknowns = unknowns;
        this.sections = sections;
        this.jars = new Jars(start.ground());
        this.forward = new Forward(start, unknowns);
        this.openings = new Openings(start, unknowns);
    }

    /** Whether a reading can be held against the room: what cannot is kept in the log and plotted. */
    boolean isUsed(Reading reading) {
        Reading.Measured measured = reading.measured();
        boolean isParted = !reading.shut().valves().isEmpty();
        return measured instanceof Reading.Fall
                || (!isParted
                        && measured instanceof Reading.Jar jar
                        && start.ground().outlet(jar.outlet()) >= 0)
                || (!isParted
                        && measured instanceof Reading.Gauge gauge
                        && node(gauge).isPresent())
                || (!isParted && measured instanceof Reading.Watts watts && isPaired(watts));
    }

    private boolean isPaired(Reading.Watts watts) {
        return watts.blower().isEmpty() && setWatts().isPresent();
    }

    private OptionalDouble setWatts() {
        return start.rounds().set().stream()
                .map(Reading::measured)
                .filter(each ->
                        each instanceof Reading.Watts watts && watts.blower().isEmpty())
                .mapToDouble(each -> ((Reading.Watts) each).watts())
                .average();
    }

    /** All readings against what may have happened, one row each; empty where the room cannot be solved then. */
    Optional<List<Row>> of(List<Reading> readings, Happening happening, double[] at) {
        Map<Set<Integer>, Optional<Stand>> stands = new HashMap<>();
        List<Row> rows = new ArrayList<>(openings.rows(at));
        for (Reading reading : readings) {
            Optional<Stand> stand = stands.computeIfAbsent(shut(reading), shut -> forward.stand(happening, at, shut));
            if (stand.isEmpty()) {
                return Optional.empty();
            }
            rows.add(row(reading, happening, stand.get(), at));
        }
        return Optional.of(rows);
    }

    /** A state of the room with nothing shut. */
    Optional<Stand> stand(Happening happening, double[] at) {
        return forward.stand(happening, at, Set.of());
    }

    private Set<Integer> shut(Reading reading) {
        if (reading.measured() instanceof Reading.Fall) {
            return Set.of();
        }
        Set<Integer> shut = new HashSet<>();
        for (OutletId id : reading.shut().outlets()) {
            shut.add(start.ground().outlet(id));
        }
        return shut;
    }

    private Row row(Reading reading, Happening happening, Stand stand, double[] at) {
        Reading.Measured measured = reading.measured();
        if (measured instanceof Reading.Jar jar) {
            return jar(reading, stand, start.ground().outlet(jar.outlet()), jars.flow(jar));
        }
        if (measured instanceof Reading.Gauge gauge) {
            double pa = stand.nodePa(node(gauge).orElseThrow());
            return gauge(reading, stand, gauge.gaugePa() - pa - at[unknowns.gauge]);
        }
        return measured instanceof Reading.Fall fall
                ? fall(reading, fall, happening, at)
                : watts(reading, ((Reading.Watts) measured).watts(), stand);
    }

    private Row jar(Reading reading, Stand stand, int i, double read) {
        OutletLaw law = start.laws().get(i);
        Off off = stand.off(i);
        double[] slope = new double[unknowns.count()];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = stand.pressure(k);
        }
        for (Felt felt : unknowns.felt(i)) {
            slope[felt.unknown()] -= felt.input().slope(law, read, off);
        }
        double grows = law.slope(read, off);
        double noise = grows * Doubts.JAR_SHARE * read;
        double variance = noise * noise + Doubts.WOBBLE_PA * Doubts.WOBBLE_PA;
        double head = stand.tapPa(i)
                - start.conditions()
                        .waterColumnPa(start.ground().network().drops().get(i).depthM());
        return new Row(
                Optional.of(reading),
                stand.tapPa(i) - law.neededPa(read, off),
                slope,
                variance,
                Math.log(grows),
                i,
                Math.max(0, head));
    }

    private Row gauge(Reading reading, Stand stand, double off) {
        double[] slope = new double[unknowns.count()];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = -stand.pressure(k);
        }
        slope[unknowns.gauge] -= 1;
        return Row.of(reading, off, slope, Doubts.WOBBLE_PA * Doubts.WOBBLE_PA);
    }

    /** A node where a gauge sits, or the nearest one of its run. */
    private Optional<Integer> node(Reading.Gauge gauge) {
        List<String> nodes = start.ground().network().nodes();
        if (gauge.at().isEmpty()) {
            return Optional.of(
                    nodes.indexOf(start.ground().fleet().placed().get(0).node()));
        }
        Outlet.OnRun at = gauge.at().get();
        return start.ground().piped().spots().entrySet().stream()
                .filter(spot -> spot.getValue().run().filter(at.run()::equals).isPresent())
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.getValue().alongM() - at.atM())))
                .map(spot -> nodes.indexOf(spot.getKey()))
                .filter(node -> node >= 0);
    }

    private Row watts(Reading reading, double watts, Stand stand) {
        double then = start.ground().fleet().watts(start.gaugePa(), Wear.NEW);
        double pa = stand.headerPa();
        double now = start.ground().fleet().watts(pa, Wear.NEW);
        double steps = (start.ground().fleet().watts(pa + 1, Wear.NEW) - now) / now;
        double[] slope = new double[unknowns.count()];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = -steps * stand.pressure(k);
        }
        double read = Math.log(watts / setWatts().orElse(watts));
        return Row.of(reading, read - Math.log(now / then), slope, Doubts.WATTS_LOG * Doubts.WATTS_LOG);
    }

    /** In air, as a share of what the outlets take, at the pressure when the valves were set. */
    private Row fall(Reading reading, Reading.Fall fall, Happening happening, double[] at) {
        boolean[] reached = sections.reached(reading.shut().valves());
        double leaks = happening instanceof Happening.Leak leak && reached[leak.section()] ? leak.share() : 0;
        double seeps = Doubts.SEEP_SHARE + at[unknowns.seep];
        double[] slope = new double[unknowns.count()];
        slope[unknowns.seep] = -1;
        Fallen fallen = Fallen.of(start, sections.volumeM3(reached), fall);
        double doubt = Doubts.FALL_SHARE * (leaks + seeps);
        return Row.of(reading, fallen.share() - leaks - seeps, slope, fallen.variance() + doubt * doubt);
    }
}
