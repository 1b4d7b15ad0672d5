package lungfish.logbook;

import java.time.LocalDate;

/**
 * Something read on a day.
 *
 * @param si in the unit of its series
 */
public record Point(LocalDate on, double si) {}
