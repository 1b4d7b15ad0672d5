package lungfish.report;

import java.util.List;
import java.util.Optional;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Spread;
import lungfish.sizing.Fleet;
import lungfish.sure.Band;
import lungfish.sure.Odds;
import lungfish.sure.Sureness;
import lungfish.sure.Weight;

/** Says how sure something is. */
public final class SureWords {
    /** A figure of a plan and the band in which it lies. */
    public record Figure(String name, Band band, Dimension dimension) {}

    /** With a worse chance than this a blower is no choice. */
    private static final double FAIR = 0.05;

    private static final double WORTH_A_LINE = 0.005;
    private static final int HUNDRED = 100;

    private final Quantities quantities;

    public SureWords(Quantities quantities) {
        this.quantities = quantities;
    }

    /** Whether a blower has a fair chance, so that it is worth listing. */
    public static boolean isFair(Sureness.CandidateOdds candidate) {
        return candidate.served().share() >= FAIR;
    }

    /** Whether so much of the doubt comes from it that it is worth a line. */
    public static boolean isWorthALine(Weight weight) {
        return weight.share() >= WORTH_A_LINE;
    }

    /** The figures of a plan, each with its band, in the order in which they are read. */
    public static List<Figure> figures(Sureness.Bands bands) {
        return List.of(
                new Figure("More outlets that fit", bands.headroom(), Dimension.COUNT),
                new Figure("Air in reserve", bands.reserve(), Dimension.SHARE),
                new Figure("Pressure needed", bands.needed(), Dimension.PRESSURE),
                new Figure("Runs at", bands.running(), Dimension.PRESSURE),
                new Figure("Gives", bands.gives(), Dimension.AIR_FLOW),
                new Figure("Draws", bands.draws(), Dimension.POWER));
    }

    /** "97 in 100"; never all or none of a hundred, for nobody has looked at all rooms; "all of 10" where few were looked at. */
    public static String odds(Odds odds) {
        boolean all = odds.holds() == odds.of();
        if (!all && odds.holds() > 0) {
            return inHundred(odds.share()) + " in 100";
        }
        if (!odds.isCertain()) {
            return (all ? "all of " : "none of ") + odds.of();
        }
        return all ? "more than 99 in 100" : "less than 1 in 100";
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

    /** Why a room needs more pressure than its plan says, where it mostly does; else nothing. */
    public Optional<String> shift(Sureness sure) {
        Band needed = sure.bands().needed();
        int outlets = sure.stages().get(0).outlets();
        String planned = show(needed.plannedSi(), Dimension.PRESSURE);
        String median = show(needed.medianSi(), Dimension.PRESSURE);
        return needed.isPlannedLow() && outlets > 1 && !planned.equals(median)
                ? Optional.of("The plan takes each device as its class. Of " + outlets
                        + " outlets one is nearly always worse, and that one sets the pressure: expect about " + median
                        + " rather than " + planned + ".")
                : Optional.empty();
    }

    /** That several machines are drawn as one; nothing of a machine alone. */
    public static Optional<String> alike(Fleet fleet) {
        int machines = fleet.machines();
        return machines > 1
                ? Optional.of("All " + machines + " machines are off alike: in truth some are better than others.")
                : Optional.empty();
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
