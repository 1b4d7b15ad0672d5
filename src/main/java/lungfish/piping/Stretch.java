package lungfish.piping;

import lungfish.room.RunId;

/**
 * The part of a run that one pipe of the network stands for.
 *
 * @param pipe position in the network's list of pipes
 * @param toM beyond the run's length where it passes the start of a closed run
 */
public record Stretch(int pipe, RunId run, double fromM, double toM) {}
