package lungfish.roomfile;

import java.util.OptionalDouble;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.json.Range;
import lungfish.room.Spread;
import lungfish.room.Spreads;

/** How far what is said of a room may be off. */
final class SpreadsFormat {
    private SpreadsFormat() {}

    static Spreads read(Fields in) {
        Spreads spreads = Spreads.UNKNOWN;
        for (Spread spread : Spread.values()) {
            OptionalDouble width = in.maybeNumber(key(spread), range(spread));
            spreads = spreads.with(spread, width);
        }
        return spreads;
    }

    static void write(JsonWriter out, Spreads spreads) {
        for (Spread spread : Spread.values()) {
            out.maybeNumber(key(spread), spreads.of(spread));
        }
    }

    private static String key(Spread spread) {
        return switch (spread) {
            case DEPTH -> "depth_m";
            case RESISTANCE -> "resistance";
            case FLOW -> "flow";
            case FOULING -> "fouling";
            case CURVE -> "curve";
            case WEAR -> "wear";
            case BORE -> "bore";
            case ROUGHNESS -> "roughness";
        };
    }

    private static Range range(Spread spread) {
        return switch (spread) {
            case DEPTH -> Ranges.DEPTH_SPREAD_M;
            case CURVE -> Ranges.CURVE_SPREAD;
            case BORE -> Ranges.BORE_SPREAD;
            case RESISTANCE, FLOW, FOULING, WEAR, ROUGHNESS -> Ranges.SHARE;
        };
    }
}
