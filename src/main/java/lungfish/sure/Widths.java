package lungfish.sure;

import java.util.EnumMap;
import java.util.Map;
import lungfish.catalogue.Catalogue;
import lungfish.room.Room;
import lungfish.room.Spread;

/**
 * How far each input may be off: half the width of the band in which eight of ten lie, in m for depths, as a share for all
 * others. What the room does not say is as wide as usual.
 */
public record Widths(Map<Spread, Double> each) {
    public Widths {
        each = Map.copyOf(each);
    }

    public static Widths of(Room room, Catalogue catalogue) {
        Map<Spread, Double> each = new EnumMap<>(Spread.class);
        for (Spread spread : Spread.values()) {
            double usual = catalogue.assumed(spread.usual()).si();
            each.put(spread, room.spreads().of(spread).orElse(usual));
        }
        return new Widths(each);
    }

    /** Half a width; 0 where the input is known exactly. */
    public double of(Spread spread) {
        return each.getOrDefault(spread, 0.0);
    }

    /** Only this input is off, all others are just as said. */
    Widths only(Spread spread) {
        return new Widths(Map.of(spread, of(spread)));
    }
}
