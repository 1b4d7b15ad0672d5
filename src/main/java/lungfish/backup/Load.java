package lungfish.backup;

import java.util.OptionalDouble;

/**
 * What hangs on the battery.
 *
 * @param runningW what the blower draws where it runs, above 0
 * @param startingW what it may draw while it starts
 * @param essentialW what it draws when only the essential outlets are on; absent where none is marked
 */
public record Load(double runningW, double startingW, OptionalDouble essentialW) {
    public Load {
        if (!(runningW > 0) || essentialW.orElse(1) <= 0) {
            throw new IllegalArgumentException("a load draws more than 0 W");
        }
    }
}
