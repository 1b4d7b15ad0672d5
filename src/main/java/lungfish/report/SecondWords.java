package lungfish.report;

import static java.util.stream.Collectors.joining;

import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.rescue.Second;
import lungfish.rescue.SecondLine;
import lungfish.room.Stirrer;

/** The filters and pumps beside the air, in words. */
public final class SecondWords {
    private static final double KG_PER_G = 1e-3;

    private final Quantities quantities;

    public SecondWords(Quantities quantities) {
        this.quantities = quantities;
    }

    /** How many may go, and what that saves. */
    public String headline(SecondLine line) {
        if (line.all().isEmpty()) {
            return "No filter or pump moves water beside the air.";
        }
        int all = line.all().size();
        if (line.mayGo() == 0) {
            return all == 1
                    ? "The one filter or pump beside the air should stay."
                    : "All " + all + " filters and pumps beside the air should stay.";
        }
        String unknown = line.unknownW() > 0 ? ", and what those draw of which the room does not say it" : "";
        return line.mayGo() + " of " + all + (all == 1 ? " filter or pump" : " filters and pumps")
                + " beside the air may go: "
                + show(line.savedW(), Dimension.POWER) + ", " + show(line.savedPerYear(), Dimension.MONEY) + " a year"
                + unknown + ".";
    }

    /** "Hang-on filter, 6 W, in Boesemani (Rack A)". */
    public String called(Second second) {
        String watts = second.stirrer().powerW().isPresent()
                ? ", " + show(second.stirrer().powerW().getAsDouble(), Dimension.POWER)
                : "";
        return kind(second.stirrer().kind()) + watts + ", in "
                + second.vessel().tank().name() + " (" + second.vessel().rack().name() + ")";
    }

    private static String kind(Stirrer.Kind kind) {
        return switch (kind) {
            case HANG_ON_FILTER -> "Hang-on filter";
            case POWERHEAD -> "Powerhead";
        };
    }

    /** "may go", or why it should stay. */
    public String verdict(Second second) {
        return second.mayGo()
                ? "may go: the air alone does its work"
                : "stays: "
                        + second.stays().stream()
                                .sorted()
                                .map(stay -> why(stay, second))
                                .collect(joining("; "));
    }

    private String why(Second.Stay stay, Second second) {
        Second.Alone air = second.air();
        return switch (stay) {
            case TURNOVER ->
                "the air alone turns the water over "
                        + show(air.turnoverPerS(), Dimension.TURNOVER) + ", wished "
                        + show(air.wishedPerS(), Dimension.TURNOVER)
                        + (air.typed() ? "" : " (common practice)");
            case OXYGEN ->
                "with air alone the water stands at "
                        + show(KG_PER_G * air.oxygenGPerM3().orElse(0), Dimension.CONCENTRATION)
                        + " by the cautious figure, no more than the alarm level";
            case KEEPS_ALIVE -> "when a blower stops, it keeps the tank out of danger until that is replaced";
            case UNKNOWN -> "nothing is known of what lives in the tank";
        };
    }

    /** "Mains fail: does nothing, danger after 5 h. Blower stops: …". */
    public String outages(Second second) {
        return second.outages().stream().map(this::says).collect(joining(" "));
    }

    private String says(Second.Effect effect) {
        String without = "without it " + danger(effect.without());
        return switch (effect.outage()) {
            case MAINS -> "The mains fail: it stands still; " + danger(effect.with()) + ".";
            case BLOWER -> "A blower stops: it goes on; " + danger(effect.with()) + ", " + without + ".";
            case CIRCUIT -> "Its circuit trips: it stands still; " + danger(effect.with()) + ".";
        };
    }

    private String danger(Second.Danger danger) {
        if (danger.cautiousS().isEmpty()) {
            return "no danger";
        }
        return "danger after " + show(danger.cautiousS().getAsDouble(), Dimension.DURATION) + " at worst, likely "
                + (danger.likelyS().isPresent()
                        ? "after " + show(danger.likelyS().getAsDouble(), Dimension.DURATION)
                        : "not");
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
