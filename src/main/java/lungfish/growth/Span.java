package lungfish.growth;

import lungfish.room.RunId;

/**
 * A piece of a run between two places.
 *
 * @param toM beyond the run's length where it passes the start of a closed run
 * @param from position in the list of places
 * @param to position in the list of places
 */
public record Span(RunId run, double fromM, double toM, int from, int to) {}
