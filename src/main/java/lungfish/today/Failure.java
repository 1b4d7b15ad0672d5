package lungfish.today;

/**
 * What the failure of one machine takes down.
 *
 * @param machine its name
 * @param outlets that hang on it
 * @param tanks that then have no air at all; where others go on beside it: that have less
 * @param leftShare of the air asked by those outlets that the machines beside it still give; 0: there are none, 1: nobody
 *     notices
 * @param standby whether a standby is there to take over
 */
public record Failure(String machine, int outlets, int tanks, double leftShare, boolean standby) {}
