package lungfish.standing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How one way to give air stands up to failures. Times a year are of the tank that fares worst.
 *
 * @param drawn whether the room has it so: drawn, planned, or as it is today
 * @param machines in all
 * @param failuresPerYear of any of them
 * @param quietYear the chance of a year without one
 * @param shortSPerYear by machines: s a year in which a tank has not all its air
 * @param airlessSPerYear by machines: s a year in which it has not even half of it; part of the time above
 * @param common causes that no second machine helps against
 */
public record Standing(
        Way way,
        boolean drawn,
        int machines,
        double failuresPerYear,
        double quietYear,
        double shortSPerYear,
        double airlessSPerYear,
        Loss loss,
        List<Common> common) {
    public Standing {
        common = List.copyOf(common);
    }

    /** By the mains, s a year, after what batteries and a generator carry. */
    public double mainsSPerYear() {
        return common.stream()
                .map(Common::sPerYear)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sum();
    }

    /** Without all its air, by machines and mains, s a year. Both at once count twice: the cautious side. */
    public double allShortSPerYear() {
        return shortSPerYear + mainsSPerYear();
    }

    /** Without half its air, by machines and mains, s a year. */
    public double allAirlessSPerYear() {
        return airlessSPerYear + mainsSPerYear();
    }

    /** Tanks that one cause takes at the worst. */
    public int tanks(Common.Cause cause) {
        return common.stream()
                .filter(each -> each.cause() == cause)
                .mapToInt(Common::tanks)
                .sum();
    }
}
