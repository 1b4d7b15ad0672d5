package lungfish.logbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.ServiceClass;
import lungfish.catalogue.ServiceClass.Task;
import lungfish.demand.Need;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.Log;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Service;
import lungfish.room.Service.Kind;
import lungfish.sizing.Fleet;

/**
 * What is to be done again, and when. What was never done counts from the first day that the log knows: that of the new blower,
 * of a first tick, reading or service. What is done to outlets counts for the one that waits longest.
 */
final class Dues {
    private static final double DAY_S = 24 * 3600;

    private final Plan plan;
    private final Catalogue catalogue;
    private final Log log;
    private final LocalDate today;

    Dues(Plan plan, Catalogue catalogue, LocalDate today) {
        this.plan = plan;
        this.catalogue = catalogue;
        this.log = plan.room().log();
        this.today = today;
    }

    /** The first to be done first; those of which nobody knows last. */
    List<Due> all() {
        List<Due> dues = new ArrayList<>(blowers());
        boolean isFiltered = plan.room().blowers(Blower.Role.PLANNED).stream()
                .anyMatch(blower -> blower.fittings().inletFilter().isPresent());
        outlets(Task.DEVICES_CLEANED, Set.of(Kind.DEVICE_CLEANED, Kind.DEVICE_EXCHANGED), need -> !isStone(need))
                .ifPresent(dues::add);
        outlets(Task.STONES_EXCHANGED, Set.of(Kind.DEVICE_EXCHANGED), Dues::isStone)
                .ifPresent(dues::add);
        outlets(Task.CHECK_VALVES_EXCHANGED, Set.of(Kind.CHECK_VALVE_EXCHANGED), Dues::hasCheckValve)
                .ifPresent(dues::add);
        room(Task.FILTER_CHANGED, Kind.FILTER_CHANGED, isFiltered).ifPresent(dues::add);
        room(Task.DRAINED, Kind.DRAINED, plan.piped().isPresent()).ifPresent(dues::add);
        room(Task.ALARM_TRIED, Kind.ALARM_TRIED, isAlarmed()).ifPresent(dues::add);
        dues.sort(Comparator.comparing((Due due) -> due.due().orElse(LocalDate.MAX)));
        return dues;
    }

    private boolean isAlarmed() {
        return plan.room().backup().alarm().isPresent()
                || !plan.room().blowers(Blower.Role.STANDBY).isEmpty();
    }

    private static boolean isStone(Need need) {
        return need.device().kind() == DeviceClass.Kind.AIR_STONE;
    }

    private static boolean hasCheckValve(Need need) {
        return need.seat()
                .outlet()
                .checkValve()
                .filter(kind -> !kind.equals(Outlet.NO_CHECK_VALVE))
                .isPresent();
    }

    private List<Due> blowers() {
        List<Fleet.Placed> placed =
                plan.duty().map(duty -> duty.candidate().fleet().placed()).orElse(List.of());
        return placed.stream().map(this::rebuild).toList();
    }

    private Due rebuild(Fleet.Placed placed) {
        Optional<LocalDate> last =
                last(service -> (service.kind() == Kind.BLOWER_NEW || service.kind() == Kind.BLOWER_REBUILT)
                        && service.blower()
                                .map(id -> id.part().equals(placed.machine().part()))
                                .orElse(true));
        double everyS = placed.machine().kind().rebuildS();
        return new Due(
                "Rebuild kit of the blower",
                Optional.of(placed.machine().part()),
                everyS,
                last,
                due(last, everyS),
                OptionalInt.empty());
    }

    private Optional<Due> room(Task task, Kind kind, boolean has) {
        if (!has) {
            return Optional.empty();
        }
        ServiceClass each = catalogue.service(task);
        Optional<LocalDate> last = last(service -> service.kind() == kind);
        return Optional.of(new Due(
                each.name(), Optional.empty(), each.everyS(), last, due(last, each.everyS()), OptionalInt.empty()));
    }

    private Optional<Due> outlets(Task task, Set<Kind> kinds, Predicate<Need> which) {
        List<OutletId> those =
                plan.demand().needs().stream().filter(which).map(Need::id).toList();
        if (those.isEmpty()) {
            return Optional.empty();
        }
        ServiceClass each = catalogue.service(task);
        List<Optional<LocalDate>> lasts =
                those.stream().map(id -> last(kinds, id)).toList();
        Optional<LocalDate> last = lasts.stream()
                .min(Comparator.comparing((Optional<LocalDate> day) -> day.orElse(LocalDate.MIN)))
                .orElse(Optional.empty());
        int overdue = (int) lasts.stream()
                .flatMap(day -> due(day, each.everyS()).stream())
                .filter(day -> day.isBefore(today))
                .count();
        return Optional.of(new Due(
                each.name(), Optional.empty(), each.everyS(), last, due(last, each.everyS()), OptionalInt.of(overdue)));
    }

    private Optional<LocalDate> last(Set<Kind> kinds, OutletId id) {
        return last(service -> kinds.contains(service.kind())
                && (service.outlets().isEmpty() || service.outlets().contains(id)));
    }

    private Optional<LocalDate> last(Predicate<Service> which) {
        return log.services().stream()
                .filter(which)
                .map(Service::on)
                .filter(day -> !day.isAfter(today))
                .max(Comparator.naturalOrder());
    }

    private Optional<LocalDate> due(Optional<LocalDate> last, double everyS) {
        return last.or(log::firstDay).map(day -> day.plusDays(Math.round(everyS / DAY_S)));
    }
}
