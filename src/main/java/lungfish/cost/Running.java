package lungfish.cost;

import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.reason.PartId;

/**
 * Machines alike that run all the year.
 *
 * @param name for people
 * @param count how many
 * @param watts that they draw together where they run
 * @param ageS how long they have run; absent: unknown, or not bought yet
 */
public record Running(String name, PartId part, BlowerClass kind, int count, double watts, OptionalDouble ageS) {
    /** Of all of them, averaged over their life. */
    double rebuildsPricePerS() {
        return count * kind.rebuildPrice() * new Upkeep(kind.rebuildS(), kind.lifeS()).rebuildsInALife() / kind.lifeS();
    }
}
