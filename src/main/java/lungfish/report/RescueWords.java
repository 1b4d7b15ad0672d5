package lungfish.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.catalogue.BackupClass;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.rescue.Cheapest;
import lungfish.rescue.Goal;
import lungfish.rescue.Hazard;
import lungfish.rescue.Kept;
import lungfish.rescue.Lost;
import lungfish.rescue.Means;
import lungfish.rescue.MeansSet;
import lungfish.rescue.Rescue;
import lungfish.rescue.Tried;
import lungfish.rescue.Unfit;
import lungfish.room.Room;

/** What keeps the tanks of a room alive, in words. */
public final class RescueWords {
    private static final int MOST_NAMED = 3;

    private final Rescue rescue;
    private final Quantities quantities;
    private final MeansWords means;

    public RescueWords(Rescue rescue, Quantities quantities, Names names) {
        this.rescue = rescue;
        this.quantities = quantities;
        this.means = new MeansWords(quantities, names);
    }

    /** What the room should live through. */
    public String hazards() {
        return "Wanted: no tank in danger, by the cautious figure, while the mains are away for "
                + time(rescue.wantedS().si()) + (rescue.wantedS().isAssumed() ? " (assumed)" : "")
                + ", and while a blower stands still for "
                + time(rescue.habits().replacedS())
                + " until it is replaced. Fuel is not counted in a price.";
    }

    /** "Cheapest for all 29 tanks: 428", or what comes nearest. */
    public String headline(Cheapest cheapest) {
        String tanks = tanks(cheapest);
        if (cheapest.asked() == 0) {
            return "Nothing is known of what lives in the tanks, so none can be judged.";
        }
        if (cheapest.keepsAll()) {
            return cheapest.isNothing()
                    ? "The room as it is keeps " + tanks + "."
                    : "Cheapest for " + tanks + ": " + price(cheapest.set().price());
        }
        int kept = cheapest.asked() - cheapest.lost().size();
        return "Nothing keeps " + tanks + ". Nearest, " + kept + ": "
                + (cheapest.isNothing()
                        ? "the room as it is"
                        : price(cheapest.set().price()));
    }

    private static String tanks(Cheapest cheapest) {
        String kind = cheapest.goal() == Goal.ESSENTIAL ? "essential tank" : "tank";
        return cheapest.asked() == 1
                ? "the one " + kind
                : (cheapest.goal() == Goal.ALL ? "all " : "the ") + cheapest.asked() + " " + kind + "s";
    }

    /** What is bought. */
    public String says(MeansSet set) {
        return means.says(set);
    }

    /** One thing of it. */
    public String says(Means one) {
        return means.says(one);
    }

    /** The words of the step that puts it into the room, fit to follow "Undo". */
    public static String step(Cheapest cheapest) {
        return cheapest.goal() == Goal.ALL ? "Add what keeps all tanks" : "Add what keeps the essential tanks";
    }

    /** Why some are lost; none where none are. */
    public List<String> lost(Cheapest cheapest) {
        return Stream.of(Lost.Why.values())
                .map(why -> cheapest.lost().stream()
                        .filter(lost -> lost.why() == why)
                        .toList())
                .filter(lost -> !lost.isEmpty())
                .map(this::lost)
                .toList();
    }

    private String lost(List<Lost> lost) {
        List<String> called = lost.stream()
                .limit(MOST_NAMED)
                .map(each -> each.vessel().tank().name() + " ("
                        + each.vessel().rack().name() + ")")
                .toList();
        String more = lost.size() > MOST_NAMED ? " and " + (lost.size() - MOST_NAMED) + " more" : "";
        return String.join(", ", called) + more + ": " + why(lost.get(0)) + ".";
    }

    private String why(Lost lost) {
        String hazard = lost.hazard() == Hazard.MAINS ? "the mains fail" : "a blower stops";
        return switch (lost.why()) {
            case SHORT_BEFORE -> "the air does not keep enough oxygen in the water even while nothing fails";
            case TOO_LITTLE ->
                "when " + hazard + ", what is left of the air is too little; danger after " + time(lost.dangerS());
            case NOT_IN_TIME ->
                "when " + hazard + ", nothing runs in time, or long enough; danger after " + time(lost.dangerS());
        };
    }

    /** "air for 16 h", "air from 8 h 30 min to 21 h": when it goes on without a break. */
    public String runs(Kept kept) {
        OptionalDouble from = kept.airFromS();
        if (from.isEmpty()) {
            return "no air";
        }
        String until = time(kept.airToS().orElseThrow());
        return from.getAsDouble() == 0 ? "air for " + until : "air from " + time(from.getAsDouble()) + " to " + until;
    }

    /** "29 of 29". */
    public String safe(Kept kept) {
        return kept.safe() + " of " + rescue.judged();
    }

    /** Means by themselves in a line: what they are, what they cost, what they do in each hazard. */
    public String line(Tried tried) {
        String price =
                tried.set().means().isEmpty() ? "" : ", " + price(tried.set().price());
        return says(tried.set()) + price + ". Tanks safe with the mains away: "
                + safe(tried.outcome().mains()) + ", with a blower stopped: "
                + safe(tried.outcome().blower()) + ". " + does(tried);
    }

    /** For how long air goes on in each hazard, what they are no help against, and the time to fill batteries again. */
    public String does(Tried tried) {
        String helpless = helpless(tried);
        String full = full(tried);
        return "Mains away: " + runs(tried.outcome().mains()) + ". A blower stops: "
                + runs(tried.outcome().blower()) + "."
                + (helpless.isEmpty() ? "" : " No help against " + helpless + ".")
                + (full.isEmpty() ? "" : " Batteries full again after " + full + ".");
    }

    /** What these means do nothing against; empty where there is nothing of the kind. */
    public static String helpless(Tried tried) {
        boolean mains =
                tried.set().means().stream().anyMatch(each -> each.against().contains(Hazard.MAINS));
        boolean blower =
                tried.set().means().stream().anyMatch(each -> each.against().contains(Hazard.BLOWER));
        return mains == blower ? "" : mains ? "a blower that stops" : "mains that fail";
    }

    /** How long the batteries take to fill again; empty where there are none. */
    public String full(Tried tried) {
        return tried.fullAgainS().isPresent() ? time(tried.fullAgainS().getAsDouble()) : "";
    }

    /** Gear of which no class is large enough. */
    public List<String> unfit() {
        return rescue.unfit().stream().map(this::unfit).toList();
    }

    private String unfit(Unfit unfit) {
        return "No " + gear(unfit.kind()) + " of the catalogue bears " + show(unfit.askedW(), Dimension.POWER) + " and "
                + show(unfit.askedSurgeW(), Dimension.POWER) + " at the start.";
    }

    private static String gear(BackupClass.Kind kind) {
        return switch (kind) {
            case BATTERY_PUMP -> "battery pump";
            case INVERTER -> "inverter";
            case GENERATOR -> "generator";
            case CHANGEOVER -> "automatic start of a standby";
            case ALARM -> "alarm";
            case SHED_VALVE -> "valve";
        };
    }

    /** Where any of it can hurt people. */
    public List<String> cautions(Room room) {
        Room with = room;
        for (Tried tried : rescue.tried()) {
            for (Means each : tried.set().means()) {
                with = each.in(with);
            }
        }
        return OutageCautions.of(with.backup(), quantities);
    }

    /** What it costs. */
    public String price(double money) {
        return money == 0 ? "at no cost" : show(money, Dimension.MONEY);
    }

    private String time(double seconds) {
        return show(seconds, Dimension.DURATION);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
