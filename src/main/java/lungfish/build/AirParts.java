package lungfish.build;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.build.PartsList.Group;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.ValveClass;
import lungfish.demand.Need;
import lungfish.piping.PipedRoom;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.OutletId;

/** What hangs on the pipe: taps and saddles, valves, airline, check valves, devices. */
final class AirParts {
    private final Ways ways;
    private final Tally tally;
    private final PipedRoom piped;
    private final Hung hung;

    AirParts(Ways ways, Tally tally, PipedRoom piped, Hung hung) {
        this.ways = ways;
        this.tally = tally;
        this.piped = piped;
        this.hung = hung;
    }

    void taps(List<Tap> taps) {
        Map<String, Integer> barbs = new TreeMap<>();
        Map<String, Integer> saddles = new TreeMap<>();
        for (Tap tap : taps) {
            barbs.merge(tap.thread().id(), tap.holes(), Integer::sum);
            if (tap.hold() == Tap.Hold.SADDLE) {
                saddles.merge(size(tap) + "/" + tap.thread().id(), tap.holes(), Integer::sum);
            }
        }
        barbs.forEach((thread, count) -> tally.supply(Group.TAPS, "tap-barb", thread, threadName(thread), count));
        saddles.forEach((key, count) -> {
            int slash = key.indexOf('/');
            String detail = ways.pipe(key.substring(0, slash)).name() + ", " + threadName(key.substring(slash + 1));
            tally.supply(Group.TAPS, "saddle", key, detail, count);
        });
    }

    private String size(Tap tap) {
        return ways.room().runs().stream()
                .filter(run -> run.id().equals(tap.run()))
                .findFirst()
                .orElseThrow()
                .size();
    }

    private String threadName(String id) {
        return ways.catalogue().building().thread(id).orElseThrow().name();
    }

    /** Adds valves, airline, the tees of strings, check valves and devices. */
    void outlets() {
        counted(this::valve).forEach((id, count) -> {
            ValveClass valve = ways.catalogue().valve(id).orElseThrow();
            tally.exact(Group.TAPS, id, valve.name(), "one an outlet", count, OptionalDouble.of(valve.price()));
        });
        airlines();
        tally.supply(Group.TAPS, "airline-tee", "", "", (double) tees());
        checkValves();
        devices();
    }

    private String valve(Need need) {
        return need.seat()
                .outlet()
                .valve()
                .map(Outlet.Valve::kind)
                .orElse(ways.catalogue().valves().get(0).id());
    }

    private Map<String, Long> counted(Function<Need, String> key) {
        return piped.needs().stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.counting()));
    }

    private void airlines() {
        Map<String, Double> metres = new TreeMap<>();
        for (int i = 0; i < piped.needs().size(); i++) {
            metres.merge(
                    airline(piped.needs().get(i).seat().outlet().airline()),
                    piped.airlineM().get(i),
                    Double::sum);
        }
        for (Gang gang : ways.room().gangs()) {
            hung.feeder(gang.id())
                    .ifPresent(feeder -> metres.merge(airline(gang.feeder()), feeder.lengthM(), Double::sum));
        }
        metres.forEach((id, lengthM) -> {
            AirlineSize size = ways.catalogue().airline(id).orElseThrow();
            tally.metres(Group.TAPS, id, size.name(), "", lengthM, OptionalDouble.of(size.pricePerM()));
        });
    }

    private String airline(Optional<Outlet.Airline> said) {
        return said.flatMap(Outlet.Airline::size)
                .orElse(ways.catalogue().airlines().get(0).id());
    }

    /** A string for so many outlets has a tee for each but the last. */
    private long tees() {
        return ways.room().gangs().stream()
                .filter(gang -> gang.kind() == Gang.Kind.TEES)
                .mapToLong(gang -> Math.max(0, hangingOn(gang) - 1))
                .sum();
    }

    private long hangingOn(Gang gang) {
        return piped.needs().stream()
                .filter(need -> need.seat()
                        .outlet()
                        .tap()
                        .filter(tap -> tap instanceof Outlet.OnGang onGang
                                && onGang.gang().equals(gang.id()))
                        .isPresent())
                .count();
    }

    private void checkValves() {
        Map<String, Long> counts =
                counted(need -> need.seat().outlet().checkValve().orElse(Outlet.NO_CHECK_VALVE));
        Map<String, Long> there =
                there(need -> need.seat().outlet().checkValve().orElse(Outlet.NO_CHECK_VALVE));
        counts.forEach((id, count) -> {
            if (!id.equals(Outlet.NO_CHECK_VALVE)) {
                CheckValveClass valve = ways.catalogue().checkValve(id).orElseThrow();
                tally.having(
                        Group.OUTLETS,
                        id,
                        valve.name(),
                        "",
                        count,
                        there.getOrDefault(id, 0L),
                        OptionalDouble.of(valve.price()));
            }
        });
    }

    private void devices() {
        Map<String, DeviceClass> classes = piped.needs().stream()
                .map(Need::device)
                .collect(Collectors.toMap(DeviceClass::id, Function.identity(), (one, same) -> one));
        Map<String, Long> there = there(need -> need.device().id());
        counted(need -> need.device().id()).forEach((id, count) -> {
            DeviceClass device = classes.get(id);
            String name = device == null ? id : device.name();
            tally.having(Group.OUTLETS, id, name, "", count, there.getOrDefault(id, 0L), OptionalDouble.empty());
        });
    }

    /** What the outlets of the pumps of today have already. */
    private Map<String, Long> there(Function<Need, String> key) {
        Set<OutletId> fed = new HashSet<>();
        ways.room().blowers().stream()
                .filter(blower -> blower.role() == Blower.Role.TODAY)
                .forEach(blower -> fed.addAll(blower.serves()));
        return piped.needs().stream()
                .filter(need -> fed.contains(need.id()))
                .collect(Collectors.groupingBy(key, Collectors.counting()));
    }
}
