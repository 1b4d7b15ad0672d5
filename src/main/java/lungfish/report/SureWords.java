package lungfish.report;

import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Spread;
import lungfish.sure.Band;
import lungfish.sure.Odds;

/** Says how sure something is. */
public final class SureWords {
    private static final int HUNDRED = 100;

    private final Quantities quantities;

    public SureWords(Quantities quantities) {
        this.quantities = quantities;
    }

    /** "97 in 100"; never all or none, for nobody has looked at all rooms. */
    public static String odds(Odds odds) {
        if (odds.holds() == odds.of()) {
            return "more than 99 in 100";
        }
        return odds.holds() == 0 ? "less than 1 in 100" : inHundred(odds.share()) + " in 100";
    }

    /** How sure the odds are: "94 to 96". */
    public static String between(Odds odds) {
        return Math.round(HUNDRED * odds.leastShare()) + " to " + Math.round(HUNDRED * odds.mostShare());
    }

    /** How many of so many, whatever is not certain being neither all nor none. */
    public static int outOf(Odds odds, int many) {
        boolean certain = odds.holds() == 0 || odds.holds() == odds.of();
        long near = Math.round(many * odds.share());
        return (int) (certain ? near : Math.max(1, Math.min(many - 1, near)));
    }

    private static long inHundred(double share) {
        return Math.max(1, Math.min(HUNDRED - 1, Math.round(HUNDRED * share)));
    }

    /** "8.4 to 9.1 kPa". */
    public String band(Band band, Dimension dimension) {
        String low = show(band.lowSi(), dimension);
        String high = show(band.highSi(), dimension);
        int unit = low.lastIndexOf(' ');
        boolean sameUnit = unit > 0 && high.endsWith(low.substring(unit));
        return (sameUnit ? low.substring(0, unit) : low) + " to " + high;
    }

    /** In the reader's units; what is counted is whole. */
    public String show(double si, Dimension dimension) {
        return quantities.show(dimension == Dimension.COUNT ? Math.rint(si) : si, dimension);
    }

    /** What may be off, as a heading. */
    public static String name(Spread spread) {
        return switch (spread) {
            case DEPTH -> "Depths";
            case RESISTANCE -> "What devices take";
            case FLOW -> "Air set at each outlet";
            case FOULING -> "Fouling of devices";
            case CURVE -> "The blower's data sheet";
            case WEAR -> "Wear of the blower";
            case BORE -> "Bore of pipe and airline";
            case ROUGHNESS -> "Roughness of pipe";
        };
    }

    /** What its width is measured in. */
    public static Dimension dimension(Spread spread) {
        return spread == Spread.DEPTH ? Dimension.DEPTH : Dimension.SHARE;
    }

    /** What a keeper can do to be surer. */
    public static String advice(Spread spread) {
        return switch (spread) {
            case DEPTH -> "Measure how deep your air releases hang.";
            case RESISTANCE -> "Hold a gauge to the tap of one device of each kind.";
            case FLOW -> "Time the air of your outlets with a jar.";
            case FOULING -> "Hold a gauge to a tap before and after cleaning its device.";
            case CURVE -> "Ask the seller for the test sheet of the very machine.";
            case WEAR -> "Rebuild the blower early, or time its air once a year.";
            case BORE -> "Measure the bore of your airline.";
            case ROUGHNESS -> "Look into the pipe: is it smooth and clean?";
        };
    }
}
