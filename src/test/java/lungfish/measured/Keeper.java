package lungfish.measured;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lungfish.air.JarFill;
import lungfish.demand.Surroundings;
import lungfish.network.AsSet;
import lungfish.plan.DemoPlans;
import lungfish.room.Log;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.room.Room;
import lungfish.room.Service;
import lungfish.room.ServiceId;

/**
 * A keeper with a jar that is off by up to 5 %, a gauge that is off by up to 0.1 kPa and a watch. When the valves were set every
 * outlet was read; 200 days later something seems wrong, and the keeper reads the gauge and ten jars: at the six outlets that seem
 * to bubble weakest, by an eye that is off by a sixth, and at four others. Devices are cleaned every eight weeks.
 */
final class Keeper {
    static final LocalDate SET = LocalDate.of(2026, 1, 10);
    static final int DAYS = 200;
    static final LocalDate TODAY = SET.plusDays(DAYS);
    private static final int CLEANED_DAYS = 56;
    static final double SINCE_CLEANED_DAYS = DAYS % CLEANED_DAYS;
    private static final double JAR_M3 = 1e-3;

    private final TrueRoom room;
    private final SplittableRandom random;
    private final AsSet then;
    private final AsSet now;
    private final double gaugeOffThen;
    private final double gaugeOff;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Service> services = new ArrayList<>();

    Keeper(TrueRoom room, SplittableRandom random) {
        this.room = room;
        this.random = random;
        this.then = room.whenSet();
        this.now = room.today();
        this.gaugeOffThen = 100 * TrueRoom.even(random);
        this.gaugeOff = 100 * TrueRoom.even(random);
        services.add(service(SET, Service.Kind.BLOWER_NEW));
        services.add(service(SET, Service.Kind.VALVES_SET));
        for (int day = CLEANED_DAYS; day < DAYS; day += CLEANED_DAYS) {
            services.add(service(SET.plusDays(day), Service.Kind.DEVICE_CLEANED));
        }
        IntStream.range(0, room.needs.size()).forEach(i -> readings.add(jar(SET, i, then)));
        readings.add(
                reading(SET, new Reading.Gauge(Optional.empty(), then.source(0).gaugePa() + gaugeOffThen)));
        readings.add(
                reading(TODAY, new Reading.Gauge(Optional.empty(), now.source(0).gaugePa() + gaugeOff)));
        firstLook().forEach(i -> readings.add(jar(TODAY, i, now)));
    }

    private List<Integer> firstLook() {
        double[] seems = IntStream.range(0, room.needs.size())
                .mapToDouble(i -> now.drop(i).freeM3PerS()
                        / room.needs.get(i).targetM3PerS().si()
                        * (1 + 0.17 * TrueRoom.even(random)))
                .toArray();
        List<Integer> byEye = new ArrayList<>(IntStream.range(0, seems.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> seems[i]))
                .toList());
        List<Integer> look = new ArrayList<>(byEye.subList(0, Math.min(6, byEye.size())));
        List<Integer> rest = byEye.subList(look.size(), byEye.size());
        for (int k = 0; k < 4 && !rest.isEmpty(); k++) {
            look.add(rest.remove(random.nextInt(rest.size())));
        }
        return look;
    }

    /** Does as advised. */
    void follow(NextReading next) {
        if (next instanceof NextReading.Jar jar) {
            readings.add(jar(TODAY, outlet(jar.outlet()), now));
        } else if (next instanceof NextReading.Gauge) {
            readings.add(reading(
                    TODAY, new Reading.Gauge(Optional.empty(), now.source(0).gaugePa() + gaugeOff)));
        } else {
            readings.add(fall(((NextReading.Fall) next).shut()));
        }
    }

    private int outlet(OutletId id) {
        return IntStream.range(0, room.needs.size())
                .filter(i -> room.needs.get(i).id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The room's file as it is by now. */
    Room file() {
        return room.plan.room().withLog(new Log(readings, services, List.of()));
    }

    double flow(int outlet) {
        return now.drop(outlet).freeM3PerS();
    }

    /** What an outlet takes today of what it took when its valve was set. */
    double kept(int outlet) {
        return now.drop(outlet).freeM3PerS() / then.drop(outlet).freeM3PerS();
    }

    private Reading jar(LocalDate on, int i, AsSet set) {
        Surroundings around = Surroundings.of(room.plan.room(), DemoPlans.CATALOGUE);
        double seconds = JarFill.seconds(
                JAR_M3,
                0,
                around.water(room.needs.get(i).seat().tank()),
                around.freeAir(),
                Math.max(1e-8, set.drop(i).freeM3PerS()));
        double read = seconds * (1 + 0.05 * TrueRoom.even(random));
        return reading(on, new Reading.Jar(room.needs.get(i).id(), read, OptionalDouble.of(JAR_M3)));
    }

    /**
     * A hole is turbulent: it passes by the root of the pressure, {@code dp/dt = −q0 √(p/p0) pa/V}, so that
     * {@code √p} falls in proportion to time. Watched until about half is left, or for a minute; the watch is off by up to half a
     * second.
     */
    private Reading fall(List<Outlet.OnRun> shut) {
        Watched watched = Watched.of(room.plan, shut);
        double ambient = room.plan.piped().orElseThrow().network().conditions().ambientPa();
        double from = room.holdPa;
        double leaks = (watched.nodes().contains(room.leakNode()) ? room.leakShare : 0) + room.seepShare;
        double rootRate = leaks * room.takes() * ambient / watched.volumeM3() / (2 * Math.sqrt(room.holdPa));
        double s = Math.min(60, (Math.sqrt(from) - Math.sqrt(from / 2)) / rootRate);
        double to = Math.pow(Math.max(0, Math.sqrt(from) - rootRate * s), 2);
        double readFrom = from + 100 * TrueRoom.even(random);
        double readTo = Math.max(0, Math.min(readFrom - 1, to + 100 * TrueRoom.even(random)));
        double watch = Math.max(0.5, s + 0.5 * TrueRoom.even(random));
        return new Reading(
                new ReadingId("r" + readings.size()),
                TODAY,
                new Reading.Fall(readFrom, readTo, watch),
                new Reading.Shut(List.of(), shut),
                Optional.empty());
    }

    private Reading reading(LocalDate on, Reading.Measured measured) {
        return new Reading(new ReadingId("r" + readings.size()), on, measured, Reading.Shut.NOTHING, Optional.empty());
    }

    private Service service(LocalDate on, Service.Kind kind) {
        return new Service(
                new ServiceId("s" + services.size()), on, kind, List.of(), Optional.empty(), Optional.empty());
    }
}
