package lungfish.room;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What has happened to the room since it was built.
 *
 * @param readings in the order in which they were typed
 * @param services in the order in which they were typed
 * @param ticks steps of the first start that are done, each once
 */
public record Log(List<Reading> readings, List<Service> services, List<Tick> ticks) {
    /** Nothing has happened. */
    public static final Log EMPTY = new Log(List.of(), List.of(), List.of());

    /**
     * A step of the first start that is done.
     *
     * @param step its key in the checklist
     */
    public record Tick(String step, LocalDate on) {}

    public Log {
        readings = List.copyOf(readings);
        services = List.copyOf(services);
        ticks = List.copyOf(ticks);
    }

    public boolean isEmpty() {
        return readings.isEmpty() && services.isEmpty() && ticks.isEmpty();
    }

    /** The first day that it knows; empty where it is empty. */
    public Optional<LocalDate> firstDay() {
        return days().min(Comparator.naturalOrder());
    }

    /** The day of its newest entry; empty where it is empty. */
    public Optional<LocalDate> lastDay() {
        return days().max(Comparator.naturalOrder());
    }

    private Stream<LocalDate> days() {
        return Stream.of(
                        services.stream().map(Service::on),
                        readings.stream().map(Reading::on),
                        ticks.stream().map(Tick::on))
                .flatMap(each -> each);
    }

    /** The same with these readings for all of its own. */
    public Log withReadings(List<Reading> those) {
        return new Log(those, services, ticks);
    }

    /** The same with these services for all of its own. */
    public Log withServices(List<Service> those) {
        return new Log(readings, those, ticks);
    }

    /** When a step was done; empty: not yet. */
    public Optional<LocalDate> done(String step) {
        return ticks.stream()
                .filter(tick -> tick.step().equals(step))
                .map(Tick::on)
                .findFirst();
    }

    /** The same with a step done on a day; empty: not done. */
    public Log ticked(String step, Optional<LocalDate> on) {
        List<Tick> after = new ArrayList<>(ticks);
        after.removeIf(tick -> tick.step().equals(step));
        on.ifPresent(day -> after.add(new Tick(step, day)));
        return new Log(readings, services, after);
    }
}
