package lungfish.logbook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.ServiceClass;
import lungfish.commissioning.Expected;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.piping.PipedRoom;
import lungfish.piping.ValveMaker;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Service;
import lungfish.sizing.Fleet;
import lungfish.sizing.Running;
import lungfish.sizing.Setting;
import lungfish.sizing.Trial;

/**
 * What the blowers gave on the days on which their gauge was read. The room stands as the first start left it: every valve takes
 * its target at the pressure at which the room runs, and the bleed lets out what the new blowers gave beyond. Fed at the pressure
 * that the gauge read, that network tells the air that went through it, and so what the blowers gave; against it stands what they
 * give new at that pressure. Devices foul from cleaning to cleaning, in proportion to time, to their class's fouled state.
 *
 * <p>Once valves were set again the bleed may stand anywhere, and the gauge tells no more of the blower: readings from then on are
 * left out until a blower is new or rebuilt.
 */
final class Shares {
    private static final double DAY_S = 24 * 3600;
    private static final Set<Service.Kind> CLEANED = Set.of(Service.Kind.DEVICE_CLEANED, Service.Kind.DEVICE_EXCHANGED);
    private static final Set<Service.Kind> BLOWER = Set.of(Service.Kind.BLOWER_NEW, Service.Kind.BLOWER_REBUILT);

    private final Plan plan;
    private final PipedRoom piped;
    private final Fleet fleet;
    private final Network set;
    private final double foulS;

    Shares(Plan plan, PipedRoom piped, Duty duty, Catalogue catalogue) {
        this.plan = plan;
        this.piped = piped;
        this.fleet = duty.candidate().fleet();
        this.foulS = catalogue.service(ServiceClass.Task.DEVICES_CLEANED).everyS();
        Running running = duty.candidate().fresh();
        List<Valve> valves = piped.needs().stream()
                .map(need -> ValveMaker.of(need.seat().outlet(), catalogue))
                .toList();
        double[] setK = Setting.all(duty.neededClean().tuned(), running.gaugePa(), valves).stream()
                .mapToDouble(Setting::valveK)
                .toArray();
        this.set = new Trial(piped, fleet, duty.neededClean().tuned(), running).network(Wear.NEW, Upkeep.CLEAN, setK);
    }

    /** Those since the blower was last new, in the order of their days, up to a day. */
    List<Share> since(LocalDate today) {
        Optional<LocalDate> begun = last(BLOWER, today);
        List<Reading> gauges = plan.room().log().readings().stream()
                .filter(reading -> gaugePa(reading).isPresent())
                .filter(reading -> reading.shut().valves().isEmpty())
                .filter(reading -> !reading.on().isAfter(today))
                .filter(reading -> begun.map(day -> !reading.on().isBefore(day)).orElse(true))
                .sorted(Comparator.comparing(Reading::on))
                .toList();
        if (gauges.isEmpty()) {
            return List.of();
        }
        LocalDate until = setAgain(gauges.get(0).on());
        return gauges.stream()
                .filter(reading -> reading.on().isBefore(until))
                .flatMap(reading -> share(reading).stream())
                .toList();
    }

    /** The first day after another on which valves were set; the last of all days where they were not. */
    private LocalDate setAgain(LocalDate after) {
        return plan.room().log().services().stream()
                .filter(service -> service.kind() == Service.Kind.VALVES_SET)
                .map(Service::on)
                .filter(day -> day.isAfter(after))
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }

    /** Of a gauge at the blower; empty where something else was read. */
    static OptionalDouble gaugePa(Reading reading) {
        return reading.measured() instanceof Reading.Gauge gauge && gauge.at().isEmpty()
                ? OptionalDouble.of(gauge.gaugePa())
                : OptionalDouble.empty();
    }

    private Optional<LocalDate> last(Set<Service.Kind> kinds, LocalDate until) {
        return plan.room().log().services().stream()
                .filter(service -> kinds.contains(service.kind()))
                .map(Service::on)
                .filter(day -> !day.isAfter(until))
                .max(Comparator.naturalOrder());
    }

    private Optional<Share> share(Reading reading) {
        double gaugePa = gaugePa(reading).orElse(0);
        Network then = then(reading);
        return share(then, gaugePa)
                .flatMap(share -> share(then, gaugePa + Expected.GAUGE_PA)
                        .map(off -> new Share(reading.on(), share, Math.abs(off - share))))
                .filter(share -> share.error() > 0);
    }

    private Optional<Double> share(Network network, double gaugePa) {
        double fresh = fleet.freeAt(gaugePa, Wear.NEW);
        return fresh <= 0
                ? Optional.empty()
                : solved(network.withSources(fleet.fixedSources(gaugePa)))
                        .map(answer -> answer.totalFreeM3PerS() / fresh);
    }

    private static Optional<AsSet> solved(Network network) {
        return Solver.of(network).asSet().match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    private Network then(Reading reading) {
        List<Drop> drops = new ArrayList<>(set.drops());
        IntStream.range(0, piped.needs().size()).forEach(i -> {
            Need need = piped.needs().get(i);
            Drop drop = drops.get(i).withDevice(fouled(need, reading.on()));
            drops.set(i, reading.shut().outlets().contains(need.id()) ? drop.withValveK(Drop.SHUT_K) : drop);
        });
        return set.withDrops(drops);
    }

    private Device fouled(Need need, LocalDate on) {
        var clean = need.resistance(Upkeep.CLEAN);
        var due = need.resistance(Upkeep.DUE);
        double by = fouled(need.id(), on);
        return new Device(
                clean.p0Pa() + by * (due.p0Pa() - clean.p0Pa()),
                clean.aPaSPerM3() + by * (due.aPaSPerM3() - clean.aPaSPerM3()),
                clean.bPaS2PerM6() + by * (due.bPaS2PerM6() - clean.bPaS2PerM6()));
    }

    /** How far on the way from clean to due, 0 to 1: since the last cleaning, else since the first day of the log. */
    private double fouled(OutletId id, LocalDate on) {
        Optional<LocalDate> cleaned = plan.room().log().services().stream()
                .filter(service -> CLEANED.contains(service.kind()))
                .filter(service ->
                        service.outlets().isEmpty() || service.outlets().contains(id))
                .map(Service::on)
                .filter(day -> !day.isAfter(on))
                .max(Comparator.naturalOrder());
        LocalDate from = cleaned.or(plan.room().log()::firstDay)
                .filter(day -> !day.isAfter(on))
                .orElse(on);
        return Math.min(1, ChronoUnit.DAYS.between(from, on) * DAY_S / foulS);
    }
}
