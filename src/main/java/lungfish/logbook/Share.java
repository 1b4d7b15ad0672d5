package lungfish.logbook;

import java.time.LocalDate;

/**
 * What the blowers gave on a day, as a share of what they give new at the same pressure.
 *
 * @param error what a gauge that is off by its usual error makes of it
 */
public record Share(LocalDate on, double share, double error) {}
