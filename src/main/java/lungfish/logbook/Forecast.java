package lungfish.logbook;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * When the blowers will fall below what the room needs.
 *
 * @param likely on the line; absent where it is not within {@link #HORIZON_YEARS}
 * @param earliest on the lower edge of its band: one in ten are sooner
 * @param latest on the upper edge: one in ten are later
 */
public record Forecast(
        Kind kind, Optional<LocalDate> likely, Optional<LocalDate> earliest, Optional<LocalDate> latest) {
    /** Further nobody can look: longer than any blower lasts. Common practice, no source. */
    public static final int HORIZON_YEARS = 20;

    /** What can be said. */
    public enum Kind {
        /** Fewer than {@link Trend#LEAST_READINGS} readings, or too close together. */
        TOO_EARLY,
        /** No fall is seen, or one so slow that it does not matter. */
        HOLDS,
        FALLS,
        /** Their line lies below already. */
        BELOW
    }

    /**
     * Of a line.
     *
     * @param need share of the new blowers' air that the room needs
     */
    static Forecast of(Optional<Trend> trend, double need) {
        return trend.map(line -> of(line, need))
                .orElseGet(() -> new Forecast(Kind.TOO_EARLY, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private static Forecast of(Trend line, double need) {
        Optional<LocalDate> likely = first(line, day -> line.at(day) <= need);
        Optional<LocalDate> earliest = first(line, day -> line.at(day) - line.bandAt(day) <= need);
        Optional<LocalDate> latest = first(line, day -> line.at(day) + line.bandAt(day) <= need);
        if (line.at(line.to()) <= need) {
            return new Forecast(Kind.BELOW, Optional.of(line.to()), earliest, latest);
        }
        boolean falls = line.slope() < 0 && earliest.isPresent();
        return new Forecast(falls ? Kind.FALLS : Kind.HOLDS, likely, falls ? earliest : Optional.empty(), latest);
    }

    /** The first day from the last reading on. */
    private static Optional<LocalDate> first(Trend line, Predicate<LocalDate> reached) {
        return line.to()
                .datesUntil(line.to().plusYears(HORIZON_YEARS))
                .filter(reached)
                .findFirst();
    }
}
