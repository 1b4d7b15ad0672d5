package lungfish.headroom;

import java.util.Optional;
import lungfish.demand.Need;
import lungfish.sizing.Limit;

/**
 * Room to grow: how many more outlets like the commonest one, at its deepest, hung at the index outlet's tap, with
 * everything retuned, the blower tired and the devices due for cleaning.
 *
 * @param outlets that still fit
 * @param freeM3PerS air left at the pressure that the room needs now; negative: short
 * @param freshFreeM3PerS the same with the blower new and the devices clean
 * @param limit the first to break; absent when none does within {@link Search#MOST}
 * @param like the outlet that the new ones are like
 */
public record Headroom(
        int outlets, double freeM3PerS, double freshFreeM3PerS, Optional<Limit.Broken> limit, Need like) {}
