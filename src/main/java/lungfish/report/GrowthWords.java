package lungfish.report;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Mend;
import lungfish.growth.RackFit;
import lungfish.growth.Repair;
import lungfish.growth.Stage;
import lungfish.growth.Stages;
import lungfish.headroom.Newcomer;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;
import lungfish.room.RunId;
import lungfish.sizing.Limit;

/** Says how a room grows, in the keeper's words and units. */
public final class GrowthWords {
    private final Quantities quantities;
    private final Names names;
    private final Limits limits;

    public GrowthWords(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
        this.limits = new Limits(quantities);
    }

    /** "Now", "Step 2, in two years". */
    public static String when(Stage.When when) {
        return when.isNow()
                ? "Now"
                : "Step " + when.number() + when.name().map(name -> ", " + name).orElse("");
    }

    /** A shape for a state, which tells it without a colour. */
    public static String mark(Stage.State state) {
        return switch (state) {
            case FITS -> "●";
            case TIGHT -> "◐";
            case BREAKS -> "✕";
        };
    }

    /** The racks that come with a stage. */
    public String racks(Stage stage) {
        return stage.when().added().stream().map(rack -> names.of(rack.part())).collect(Collectors.joining(", "));
    }

    /** How a stage stands, in a few words. */
    public static String state(Stage stage) {
        return switch (stage.state()) {
            case FITS -> "fits";
            case TIGHT -> "fits, eats into the reserve";
            case BREAKS -> "breaks";
        };
    }

    /** What is behind its state: the limit that breaks and by how much, or what is left. */
    public String verdict(Stage stage) {
        Stage.Standing standing = stage.standing();
        String reserve = show(standing.blower().reserveShare(), Dimension.SHARE) + " in reserve";
        return standing.breaks()
                .map(this::broken)
                .orElseGet(() -> more(standing.headroom().outlets()) + ", " + reserve);
    }

    private String broken(Limit.Broken broken) {
        boolean isShort = broken.limit() == Limit.FLOW || broken.limit() == Limit.PRESSURE;
        return limits.says(broken)
                + (isShort ? ", short by " + show(broken.bySi(), broken.limit().dimension()) : "");
    }

    /** "17 more outlets". */
    public static String more(int outlets) {
        return outlets == 0 ? "no more outlets" : outlets == 1 ? "1 more outlet" : outlets + " more outlets";
    }

    /** "Step 2 breaks", "Every step fits". */
    public static String brief(Stages stages) {
        return stages.firstToBreak()
                .map(first -> first.when().isNow()
                        ? "The room breaks now"
                        : "Step " + first.when().number() + " breaks")
                .orElse(stages.hasSteps() ? "Every step fits" : "No step is planned");
    }

    /** Which stage breaks first, or that none does. */
    public String headline(Stages stages) {
        return stages.firstToBreak()
                .map(this::breaksFirst)
                .orElse(
                        stages.hasSteps()
                                ? "The blower of now carries every step."
                                : "No rack is planned. Mark one as planned, and say with which step it comes.");
    }

    private String breaksFirst(Stage first) {
        String when = first.when().isNow() ? "now" : "at " + lower(when(first.when()));
        return "Breaks first " + when + ": "
                + first.standing().breaks().map(each -> each.limit().words()).orElse("") + ".";
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    /** Which blower the stages rest on. */
    public static String blower(Stages stages) {
        String name = stages.blower().name();
        return stages.recommended()
                ? "On the blower that would be chosen now, " + name + "."
                : "On the blower that the room names, " + name + ".";
    }

    /** The cheapest step that mends a stage, with its price. */
    public String mend(Repair repair) {
        if (repair.mend().isEmpty()) {
            return "None of " + repair.tried() + " steps that were tried mends it.";
        }
        Mend mend = repair.mend().get();
        String step = mend(mend) + ", " + price(mend.price());
        return repair.still()
                .map(wish -> "No step meets every wish. Nearest: " + step + "; then " + limits.says(wish) + ".")
                .orElse("Cheapest mend: " + step + ".");
    }

    private String price(double money) {
        return money == 0 ? "at no cost" : show(money, Dimension.MONEY);
    }

    /** A step as something to do. */
    public String mend(Mend mend) {
        if (mend instanceof Mend.Bleed bleed) {
            return bleed.to() instanceof Blower.Unbled ? "shut the bleed" : "bleed it down to what the room needs";
        }
        if (mend instanceof Mend.WiderPipe pipe) {
            return "lay " + show(pipe.metres(), Dimension.LENGTH) + " of pipe anew with its fittings in "
                    + pipe.to().name();
        }
        if (mend instanceof Mend.Exchange exchange) {
            return (exchange.machines() > 1 ? "exchange the blowers for " : "exchange the blower for ")
                    + count(exchange.machines())
                    + exchange.to().name();
        }
        if (mend instanceof Mend.Beside beside) {
            return "one more beside it, " + beside.like().name();
        }
        if (mend instanceof Mend.Silencer silencer) {
            return "fit " + (silencer.pieces() > 1 ? count(silencer.pieces()) : "an ")
                    + lower(silencer.kind().name());
        }
        if (mend instanceof Mend.MoreBattery battery) {
            return "one more battery of " + show(battery.like().capacityC(), Dimension.CHARGE) + " at "
                    + show(battery.like().voltageV(), Dimension.VOLTAGE);
        }
        return ((Mend.Together) mend).steps().stream().map(this::mend).collect(Collectors.joining(", and "));
    }

    private static String count(int many) {
        return many > 1 ? many + " × " : "";
    }

    /** What to buy today to carry all; empty where nothing breaks. */
    public Optional<String> foresight(Stages stages) {
        if (stages.firstToBreak().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(stages.foresight()
                .map(this::foresight)
                .orElse("No class of blower, with as many machines as now, would carry every step within all wishes."));
    }

    private String foresight(Stages.Foresight foresight) {
        double more = foresight.more();
        String than = Math.abs(more) < 0.5
                ? "no more than that of now"
                : show(Math.abs(more), Dimension.MONEY) + (more > 0 ? " more" : " less") + " than that of now";
        return "Bought today, " + count(foresight.machines()) + foresight.kind().name() + " would carry every step: "
                + show(foresight.price(), Dimension.MONEY) + ", " + than + ".";
    }

    /** "Medium sponge filter, 25 cm deep, 1.50 L/min". */
    public String newcomer(Newcomer newcomer) {
        return newcomer.device().name() + ", " + show(newcomer.depthM(), Dimension.DEPTH) + " deep, "
                + show(newcomer.targetM3PerS(), Dimension.AIR_FLOW);
    }

    /** How many fit where, in a line. */
    public String headline(HeadroomMap map) {
        if (map.most() == 0) {
            return count(map) + ": " + stops(map) + ".";
        }
        return map.placeMatters()
                ? count(map) + "; most at " + best(map) + "."
                : count(map) + " anywhere on the pipe: the place does not matter.";
    }

    /** "17 more outlets", "14 to 98 more outlets". */
    public static String count(HeadroomMap map) {
        if (map.most() == 0) {
            return "No more outlets";
        }
        return map.least() == map.most() ? more(map.most()) : map.least() + " to " + more(map.most());
    }

    /** Where they fit, and what stops one more there. */
    public String where(HeadroomMap map) {
        if (map.most() == 0) {
            return "Not one more fits anywhere: " + stops(map) + " is the limit.";
        }
        String where =
                map.placeMatters() ? "Most at " + best(map) + "." : "Anywhere on the pipe: the place does not matter.";
        return where + " First to break: " + stops(map) + ". Each place stands alone: the counts do not add up.";
    }

    private String stops(HeadroomMap map) {
        return limit(map.best().flatMap(place -> place.fits().limit()));
    }

    private String best(HeadroomMap map) {
        return map.best().map(place -> place(place.run(), place.alongM())).orElse("no place");
    }

    /** "3.20 m along Loop". */
    public String place(RunId run, double alongM) {
        return show(alongM, Dimension.LENGTH) + " along " + names.of(run.part());
    }

    /** Whether a planned rack fits now, and where best. */
    public String rack(RackFit rack) {
        if (!rack.fits()) {
            return "does not fit now: " + rack.breaks().map(this::broken).orElse("");
        }
        String after = "fits now by itself, " + rack.own().outlets() + " more after it";
        return rack.best()
                .map(best -> after + ", or " + best.fits().outlets() + " with all of it hung at "
                        + place(best.run(), best.alongM()))
                .orElse(after + " wherever it is hung");
    }

    /** What stops one more. */
    public String limit(Optional<Limit.Broken> limit) {
        return limit.map(broken -> broken.limit().words()).orElse("nothing");
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
