package lungfish.room;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Mains power and its price.
 *
 * @param pricePerJ in the keeper's currency, for a joule (a kWh is 3.6 MJ)
 * @param currency a label such as EUR; no rates are known
 */
public record Supply(
        OptionalDouble voltageV, OptionalDouble frequencyHz, OptionalDouble pricePerJ, Optional<String> currency) {
    /** Nothing is known. */
    public static final Supply UNKNOWN =
            new Supply(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** The same mains with this voltage; empty: unknown. */
    public Supply withVoltageV(OptionalDouble that) {
        return new Supply(that, frequencyHz, pricePerJ, currency);
    }

    /** The same mains with this frequency; empty: unknown. */
    public Supply withFrequencyHz(OptionalDouble that) {
        return new Supply(voltageV, that, pricePerJ, currency);
    }

    /** The same mains at this price of a joule; empty: unknown. */
    public Supply withPricePerJ(OptionalDouble that) {
        return new Supply(voltageV, frequencyHz, that, currency);
    }
}
