package lungfish.edit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A place along one line that draws things to it.
 *
 * @param atM where a thing that is drawn to it comes to rest
 * @param lineM where the line that explains it runs
 * @param words what it is: "rack's end", "level with rack B"
 */
public record Stop(double atM, double lineM, String words) {
    /** A stop whose line runs where the thing rests. */
    static Stop at(double atM, String words) {
        return new Stop(atM, atM, words);
    }

    /** The nearest of them, if it is near enough; of two equally near, the earlier. */
    static Optional<Stop> nearest(List<Stop> stops, double atM, double toleranceM) {
        return stops.stream()
                .filter(stop -> Math.abs(stop.atM - atM) <= toleranceM)
                .min(Comparator.comparingDouble(stop -> Math.abs(stop.atM - atM)));
    }

    /** Where something comes to rest: at the nearest stop, else on the grid, where there is one. */
    static double rest(Optional<Stop> stop, double atM, OptionalDouble gridM) {
        double onGridM = gridM.isPresent() && gridM.getAsDouble() > 0
                ? Math.rint(atM / gridM.getAsDouble()) * gridM.getAsDouble()
                : atM;
        return Metres.clean(stop.map(Stop::atM).orElse(onGridM));
    }
}
