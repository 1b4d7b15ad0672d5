package lungfish.room;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** How far what is said of a room may be off, where the keeper has said it. */
public record Spreads(Map<Spread, Double> said) {
    /** Nothing is said. */
    public static final Spreads UNKNOWN = new Spreads(Map.of());

    public Spreads {
        said = Map.copyOf(said);
    }

    /** Half the width of the band in which eight of ten lie, m or a share; empty: not said. */
    public OptionalDouble of(Spread spread) {
        Double width = said.get(spread);
        return width == null ? OptionalDouble.empty() : OptionalDouble.of(width);
    }

    /** The same with this width of one; empty: unknown. */
    public Spreads with(Spread spread, OptionalDouble width) {
        Map<Spread, Double> after = new EnumMap<>(Spread.class);
        after.putAll(said);
        after.remove(spread);
        width.ifPresent(that -> after.put(spread, that));
        return new Spreads(after);
    }
}
