package lungfish.edit;

import lungfish.quantity.Dimension;
import lungfish.room.Spread;

/** The places where a keeper says how far what is said of a room may be off. */
public final class SpreadValues {
    private static final double DEEPEST_M = 1;

    /** Beyond these nothing would be left of a bore, or of a machine's air. */
    private static final double BORE = 0.2;

    private static final double CURVE = 0.5;

    private SpreadValues() {}

    /** The number that says one of them. */
    public static OwnValue of(Spread spread) {
        return OwnValue.within(
                label(spread),
                dimension(spread),
                limits(spread),
                room -> room.spreads().of(spread),
                (room, si) -> room.withSpreads(room.spreads().with(spread, si)));
    }

    private static String label(Spread spread) {
        return switch (spread) {
            case DEPTH -> "Depths, give or take";
            case RESISTANCE -> "What devices take, give or take";
            case FLOW -> "Air set at each outlet, give or take";
            case FOULING -> "Fouling of devices, give or take";
            case CURVE -> "Air by the data sheet, give or take";
            case WEAR -> "Wear of the blower, give or take";
            case BORE -> "Bores, give or take";
            case ROUGHNESS -> "Roughness of pipe, give or take";
        };
    }

    private static Dimension dimension(Spread spread) {
        return spread == Spread.DEPTH ? Dimension.DEPTH : Dimension.SHARE;
    }

    private static Limits limits(Spread spread) {
        return switch (spread) {
            case DEPTH -> Limits.from(0, DEEPEST_M);
            case BORE -> Limits.from(0, BORE);
            case CURVE -> Limits.from(0, CURVE);
            case RESISTANCE, FLOW, FOULING, WEAR, ROUGHNESS -> Limits.SHARE;
        };
    }
}
