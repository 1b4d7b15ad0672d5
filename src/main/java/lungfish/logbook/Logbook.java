package lungfish.logbook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import lungfish.air.JarFill;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.commissioning.LeakTest;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.plan.Plan;
import lungfish.reason.Assumable;
import lungfish.room.Reading;
import lungfish.room.Service;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;

/**
 * What was read and done over time, and what it says of the days to come.
 *
 * @param today the day on which it is asked
 * @param gauges at the blower, Pa gauge
 * @param watts of the planned blowers, W
 * @param levels at the listener, dB(A)
 * @param jars by the id of their outlet, m³/s of free air
 * @param leaks what the pipe lets out at the pressure at which the room runs, as a share of the room's air
 * @param shares what the blowers gave, since they were last new; empty where the room cannot be solved
 * @param need share of the new blowers' air that the room needs at the pressure that it needs; absent as above
 * @param trend of the shares; absent: it cannot be told yet
 * @param dues the first to be done first
 * @param services in the order of their days
 */
public record Logbook(
        LocalDate today,
        List<Point> gauges,
        List<Point> watts,
        List<Point> levels,
        Map<String, List<Point>> jars,
        List<Point> leaks,
        List<Share> shares,
        OptionalDouble need,
        Optional<Trend> trend,
        Forecast forecast,
        List<Due> dues,
        List<Service> services) {
    public Logbook {
        gauges = List.copyOf(gauges);
        watts = List.copyOf(watts);
        levels = List.copyOf(levels);
        jars = new TreeMap<>(jars);
        leaks = List.copyOf(leaks);
        shares = List.copyOf(shares);
        dues = List.copyOf(dues);
        services = List.copyOf(services);
    }

    /**
     * The logbook of a planned room.
     *
     * @param catalogue that the plan was made with
     * @param today what is written for later days is passed over
     */
    public static Logbook of(Plan plan, Catalogue catalogue, LocalDate today) {
        Reader reader = new Reader(plan, catalogue, today);
        List<Share> shares = plan.duty()
                .flatMap(duty -> plan.piped().map(piped -> new Shares(plan, piped, duty, catalogue).since(today)))
                .orElse(List.of());
        OptionalDouble need = need(plan);
        Optional<Trend> trend = Trend.through(shares);
        return new Logbook(
                today,
                reader.series(reading -> Shares.gaugePa(reading)),
                reader.series(Logbook::watts),
                reader.series(reading -> reading.measured() instanceof Reading.Level level
                        ? OptionalDouble.of(level.dba())
                        : OptionalDouble.empty()),
                reader.jars(),
                reader.series(reader::leak),
                shares,
                need,
                trend,
                Forecast.of(trend, need.orElse(0)),
                new Dues(plan, catalogue, today).all(),
                plan.room().log().services().stream()
                        .filter(service -> !service.on().isAfter(today))
                        .sorted(Comparator.comparing(Service::on))
                        .toList());
    }

    private static OptionalDouble watts(Reading reading) {
        return reading.measured() instanceof Reading.Watts watts
                        && watts.blower().isEmpty()
                ? OptionalDouble.of(watts.watts())
                : OptionalDouble.empty();
    }

    private static OptionalDouble need(Plan plan) {
        if (plan.duty().isEmpty()) {
            return OptionalDouble.empty();
        }
        Needed needed = plan.duty().get().needed();
        Fleet fleet = plan.duty().get().candidate().fleet();
        double fresh = fleet.freeAt(needed.pressurePa(), Wear.NEW);
        return fresh > 0 ? OptionalDouble.of(needed.freeM3PerS() / fresh) : OptionalDouble.empty();
    }

    /** Reads what was measured as series, in the order of their days. */
    private record Reader(Plan plan, Catalogue catalogue, LocalDate today) {
        List<Point> series(Function<Reading, OptionalDouble> what) {
            return plan.room().log().readings().stream()
                    .filter(reading -> !reading.on().isAfter(today))
                    .filter(reading -> what.apply(reading).isPresent())
                    .map(reading -> new Point(reading.on(), what.apply(reading).getAsDouble()))
                    .sorted(Comparator.comparing(Point::on))
                    .toList();
        }

        Map<String, List<Point>> jars() {
            Map<String, List<Point>> jars = new TreeMap<>();
            for (Need need : plan.demand().needs()) {
                List<Point> series = series(reading -> jar(reading, need));
                if (!series.isEmpty()) {
                    jars.put(need.id().text(), series);
                }
            }
            return jars;
        }

        private OptionalDouble jar(Reading reading, Need need) {
            if (!(reading.measured() instanceof Reading.Jar jar)
                    || !jar.outlet().equals(need.id())
                    || jar.s() <= 0) {
                return OptionalDouble.empty();
            }
            double jarM3 = jar.jarM3()
                    .orElse(plan.room()
                            .wishes()
                            .jarM3()
                            .orElse(catalogue.assumed(Assumable.JAR).si()));
            Surroundings surroundings = Surroundings.of(plan.room(), catalogue);
            return OptionalDouble.of(JarFill.freeAirM3PerS(
                    jarM3, 0, surroundings.water(need.seat().tank()), surroundings.freeAir(), jar.s()));
        }

        OptionalDouble leak(Reading reading) {
            if (!(reading.measured() instanceof Reading.Fall fall)
                    || plan.duty().isEmpty()
                    || plan.piped().isEmpty()) {
                return OptionalDouble.empty();
            }
            double runsPa = plan.duty().get().candidate().fresh().gaugePa();
            double takes = plan.duty().get().needed().freeM3PerS();
            double ambientPa = Surroundings.of(plan.room(), catalogue).ambientPa();
            double leaks = LeakTest.leakM3PerS(
                    plan.piped().get().network().pipes(), runsPa, ambientPa, fall.fromPa(), fall.toPa(), fall.s());
            return takes > 0 && Double.isFinite(leaks) ? OptionalDouble.of(leaks / takes) : OptionalDouble.empty();
        }
    }
}
