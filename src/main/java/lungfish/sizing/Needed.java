package lungfish.sizing;

import lungfish.demand.Need;
import lungfish.network.DropNeed;
import lungfish.network.Tuned;

/**
 * What the room needs of a blower: its targets, at the pressure where the index outlet's spare is nothing.
 *
 * @param pressurePa gauge, at the blowers' outlets
 * @param freeM3PerS sum of the targets
 * @param index the worst-served outlet
 * @param indexNeed what that outlet needs at its tap, term by term
 * @param pipePa lost between the blower and that tap
 * @param tuned the whole answer
 */
public record Needed(
        double pressurePa, double freeM3PerS, Need index, DropNeed indexNeed, double pipePa, Tuned tuned) {}
