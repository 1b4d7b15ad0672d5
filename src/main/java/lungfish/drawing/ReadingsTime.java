package lungfish.drawing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lungfish.logbook.Logbook;
import lungfish.logbook.Point;
import lungfish.room.Service;

/** The days of a logbook along a line of pixels. */
final class ReadingsTime {
    private static final int[] MONTHS = {1, 2, 3, 6, 12, 24, 60};
    private static final double LABEL_PX = 64;

    /** Shorter than this a log is not drawn wider. */
    private static final int LEAST_DAYS = 60;

    /** A day that is foreseen is shown where it is no further than this many times what is known. */
    private static final int FORESEEN = 3;

    private final LocalDate from;
    private final LocalDate to;
    private final double left;
    private final double width;

    ReadingsTime(Logbook logbook, double left, double width) {
        this.from = first(logbook);
        long known = Math.max(LEAST_DAYS, ChronoUnit.DAYS.between(from, logbook.today()));
        LocalDate furthest = from.plusDays((FORESEEN + 1) * known);
        LocalDate end = logbook.forecast()
                .likely()
                .filter(day -> day.isBefore(furthest))
                .filter(day -> day.isAfter(logbook.today()))
                .orElse(from.plusDays(known));
        this.to = end.plusDays(Math.max(1, ChronoUnit.DAYS.between(from, end) / 12));
        this.left = left;
        this.width = width;
    }

    private static LocalDate first(Logbook logbook) {
        Stream<LocalDate> read = ReadingsLanes.of(logbook).stream()
                .flatMap(lane -> lane.points().stream())
                .map(Point::on);
        Stream<LocalDate> done = logbook.services().stream().map(Service::on);
        return Stream.concat(read, done).min(LocalDate::compareTo).orElse(logbook.today());
    }

    LocalDate from() {
        return from;
    }

    LocalDate to() {
        return to;
    }

    double x(LocalDate day) {
        return left + width * ChronoUnit.DAYS.between(from, day) / ChronoUnit.DAYS.between(from, to);
    }

    /** First days of months, as far apart as their labels need. */
    List<LocalDate> labelled(Ink ink) {
        for (int months : MONTHS) {
            List<LocalDate> days = every(months);
            if (days.size() <= 1 || width / (days.size() - 1) >= ink.px(LABEL_PX)) {
                return days;
            }
        }
        return List.of();
    }

    private List<LocalDate> every(int months) {
        List<LocalDate> days = new ArrayList<>();
        LocalDate day = LocalDate.of(from.getYear(), 1, 1);
        while (!day.isAfter(to)) {
            if (!day.isBefore(from)) {
                days.add(day);
            }
            day = day.plusMonths(months);
        }
        return days;
    }
}
