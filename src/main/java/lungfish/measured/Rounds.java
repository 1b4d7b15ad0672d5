package lungfish.measured;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lungfish.room.Log;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Service;

/**
 * The two rounds of readings that are held against each other: what was read when the valves had been set, and what was read
 * last. Readings a few days apart are one round.
 *
 * @param set what was read then; empty where the newest round is the only one
 * @param now the newest round
 * @param isSetByJar whether the log says that the valves were set by the jar; else they stand as the room says
 */
record Rounds(Log log, LocalDate setOn, LocalDate on, List<Reading> set, List<Reading> now, boolean isSetByJar) {
    /** A round takes a weekend, and the next one when something was forgotten: common practice, no source. */
    private static final int ROUND_DAYS = 3;

    private static final double DAY_S = 24 * 3600;
    private static final Set<Service.Kind> CLEANED = Set.of(Service.Kind.DEVICE_CLEANED, Service.Kind.DEVICE_EXCHANGED);
    private static final Set<Service.Kind> BLOWER = Set.of(Service.Kind.BLOWER_NEW, Service.Kind.BLOWER_REBUILT);

    /** Empty where nothing was read up to a day. */
    static Optional<Rounds> of(Log log, LocalDate today) {
        return log.readings().stream()
                .map(Reading::on)
                .filter(day -> !day.isAfter(today))
                .max(Comparator.naturalOrder())
                .map(on -> until(log, on));
    }

    private static Rounds until(Log log, LocalDate on) {
        Optional<LocalDate> service = log.services().stream()
                .filter(each -> each.kind() == Service.Kind.VALVES_SET)
                .map(Service::on)
                .filter(day -> !day.isAfter(on))
                .max(Comparator.naturalOrder());
        Optional<LocalDate> ticked = log.ticks().stream()
                .map(Log.Tick::on)
                .filter(day -> !day.isAfter(on))
                .max(Comparator.naturalOrder());
        Optional<LocalDate> valvesSet = service.or(() -> ticked);
        LocalDate from = valvesSet.orElse(LocalDate.MIN);
        LocalDate first = days(log, day -> !day.isBefore(from) && !day.isAfter(on))
                .min(Comparator.naturalOrder())
                .orElse(on);
        List<Reading> now = within(log, on.minusDays(ROUND_DAYS), on, from);
        boolean isOnlyOne = ChronoUnit.DAYS.between(first, on) <= ROUND_DAYS;
        List<Reading> set = isOnlyOne ? List.of() : within(log, first, first.plusDays(ROUND_DAYS), from);
        set = set.stream().filter(reading -> !now.contains(reading)).toList();
        return new Rounds(log, valvesSet.orElse(first), on, set, now, valvesSet.isPresent() || !set.isEmpty());
    }

    private static Stream<LocalDate> days(Log log, Predicate<LocalDate> which) {
        return log.readings().stream().map(Reading::on).filter(which);
    }

    private static List<Reading> within(Log log, LocalDate from, LocalDate to, LocalDate notBefore) {
        return log.readings().stream()
                .filter(reading -> !reading.on().isBefore(from) && !reading.on().isAfter(to))
                .filter(reading -> !reading.on().isBefore(notBefore))
                .toList();
    }

    /** Whether the newest round is that in which the valves were set: nothing can have changed since. */
    boolean isFirst() {
        return isSetByJar && ChronoUnit.DAYS.between(setOn, on) <= ROUND_DAYS;
    }

    /** Days from a device's last cleaning; from the setting of the valves where it was never cleaned before. */
    double sinceCleanedS(OutletId outlet, LocalDate day) {
        LocalDate cleaned = log.services().stream()
                .filter(service -> CLEANED.contains(service.kind()))
                .filter(service ->
                        service.outlets().isEmpty() || service.outlets().contains(outlet))
                .map(Service::on)
                .filter(on -> !on.isAfter(day))
                .max(Comparator.naturalOrder())
                .orElse(setOn.isAfter(day) ? day : setOn);
        return ChronoUnit.DAYS.between(cleaned, day) * DAY_S;
    }

    /** How long the blowers ran between the rounds, or since they were rebuilt after the first. */
    double ranS() {
        LocalDate from = log.services().stream()
                .filter(service -> BLOWER.contains(service.kind()))
                .map(Service::on)
                .filter(day -> !day.isAfter(on) && day.isAfter(setOn))
                .max(Comparator.naturalOrder())
                .orElse(setOn);
        return ChronoUnit.DAYS.between(from, on) * DAY_S;
    }
}
