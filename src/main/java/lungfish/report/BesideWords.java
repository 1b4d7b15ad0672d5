package lungfish.report;

import java.util.List;
import java.util.Optional;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;
import lungfish.sizing.Limit;
import lungfish.today.Beside;
import lungfish.today.Reason;
import lungfish.today.Verdict;

/** Whether to buy a central blower, in a keeper's words: the verdict, because of what, and what speaks for it and against it. */
public final class BesideWords {
    /** What stands over figures of a blower where the small pumps should stay. */
    private static final String NOT_YET =
            "No blower yet: the small pumps give this room its air, and one would not pay. What follows is of a blower, were"
                    + " one bought.";

    private final Plan plan;
    private final Beside beside;
    private final Quantities quantities;

    public BesideWords(Plan plan, Beside beside, Quantities quantities) {
        this.plan = plan;
        this.beside = beside;
        this.quantities = quantities;
    }

    /** What stands over figures of a blower where the small pumps should stay; empty elsewhere. */
    public static Optional<String> notYet(Plan plan) {
        return plan.keepPumps() && plan.duty().isPresent() ? Optional.of(NOT_YET) : Optional.empty();
    }

    /** A few words, fit for a headline. */
    public String headline() {
        return switch (beside.verdict()) {
            case PAYS -> "Yes: it pays from year " + beside.paybackYear().orElse(0) + " on";
            case NEEDED -> "Yes, though it never pays back";
            case NOT_YET -> "Not yet";
            case MEND_FIRST -> "Not as it is planned now";
            case UNSAID -> "Not to be told yet";
            case NO_BLOWER -> "No blower to compare with";
            case NO_PUMPS -> "No pumps of today";
        };
    }

    /** Verdict and cause in one. */
    String sentence() {
        boolean goesOn = beside.verdict() == Verdict.NEEDED;
        return headline() + (goesOn ? ", because " + needed() : ". " + because());
    }

    /** The sentences under the headline. */
    public String because() {
        return switch (beside.verdict()) {
            case PAYS -> "From then on the central blower stays cheaper than keeping the small pumps." + alsoShort();
            case NEEDED -> "Because " + needed();
            case NOT_YET -> notYet();
            case MEND_FIRST -> "The planned blower does not serve this room" + stopped() + ": mend that first.";
            case UNSAID ->
                "It never pays back, and the room does not say which outlets each small pump feeds: so nobody can say"
                        + " whether they give enough air. Choose a pump and say what it feeds.";
            case NO_BLOWER -> "Nothing can be solved yet: draw a main with its blower, and see what must be mended.";
            case NO_PUMPS -> noPumps();
        };
    }

    private String noPumps() {
        return plan.room().blowers(Blower.Role.TODAY).isEmpty()
                ? "What runs today? The room names no pump, so there is nothing to set a central blower against. Draw each"
                        + " pump, and say what it is and which outlets it feeds."
                : "Pumps of today are drawn, but of none is it said what it is. Choose each and say its class, and which"
                        + " outlets it feeds.";
    }

    private String notYet() {
        String kept = "The small pumps you have give every outlet what it asks";
        String growth = plan.demand().planned().isEmpty() ? "" : ", and the planned racks too";
        String money = beside.planned().isEmpty() ? "." : "; a central blower would not pay within " + years() + ".";
        return kept + growth + money + turning().map(words -> " " + words).orElse("");
    }

    /** What would change the answer. */
    public Optional<String> turning() {
        return beside.paysFrom().isPresent()
                ? Optional.of("With about " + beside.paysFrom().getAsInt()
                        + " outlets it would pay: then more small pumps would cost more than the blower.")
                : Optional.empty();
    }

    private String alsoShort() {
        return beside.reasons().stream()
                .filter(reason -> isNeed(reason.kind()))
                .findFirst()
                .map(reason -> " And " + says(reason) + ".")
                .orElse("");
    }

    private String needed() {
        List<String> needs = beside.reasons().stream()
                .filter(reason -> isNeed(reason.kind()))
                .map(this::says)
                .toList();
        return String.join(", and ", needs) + ". Over " + years() + " it costs " + dearer() + " a year more.";
    }

    private static boolean isNeed(Reason.Kind kind) {
        return kind == Reason.Kind.AIR_SHORT || kind == Reason.Kind.UNFED || kind == Reason.Kind.GROWTH;
    }

    private String dearer() {
        return beside.reasons().stream()
                .filter(reason -> reason.kind() == Reason.Kind.DEARER)
                .findFirst()
                .map(reason -> show(reason.by(), Dimension.MONEY))
                .orElse("no less");
    }

    private String stopped() {
        return plan.duty().map(Duty::candidate).stream()
                .flatMap(candidate -> candidate.broken().stream())
                .filter(broken -> !broken.limit().isWish())
                .findFirst()
                .map(Limit.Broken::limit)
                .map(limit -> ", stopped by " + limit.words())
                .orElse("");
    }

    private String years() {
        return beside.years() + " years";
    }

    /** The reasons for it, or those against it, as parts of a sentence; what the verdict has said already is not said again. */
    public List<String> reasons(boolean thatSpeakFor) {
        return beside.reasons(thatSpeakFor).stream()
                .filter(reason -> !isSaid(reason.kind()))
                .map(this::says)
                .toList();
    }

    private boolean isSaid(Reason.Kind kind) {
        return switch (beside.verdict()) {
            case NEEDED -> isNeed(kind) || kind == Reason.Kind.DEARER;
            case PAYS -> isNeed(kind);
            default -> false;
        };
    }

    /** One reason, as the part of a sentence. */
    public String says(Reason reason) {
        return switch (reason.kind()) {
            case AIR_SHORT ->
                "the pumps lack " + flow(reason.by()) + " at the depths of " + counted(reason.of(), "outlet")
                        + " that hang on them";
            case UNFED -> counted(reason.by(), "outlet") + (reason.by() == 1 ? " has" : " have") + " no pump at all";
            case GROWTH ->
                "the planned racks ask for " + flow(reason.by()) + " and the pumps have "
                        + (reason.of() > 0 ? flow(reason.of()) : "none") + " to spare";
            case QUIETER -> show(reason.by(), Dimension.SOUND_LEVEL) + " quieter where you sit";
            case LOUDER -> show(reason.by(), Dimension.SOUND_LEVEL) + " louder where you sit";
            case FEWER_PLUGS ->
                counted(reason.by(), "plug") + " fewer (" + count(reason.of() - reason.by()) + instead(reason);
            case MORE_PLUGS ->
                counted(reason.by(), "plug") + " more (" + count(reason.of() + reason.by()) + instead(reason);
            case FEWER_EVENTS ->
                "rebuilt or replaced " + times(reason.of() - reason.by()) + " times a year instead of "
                        + times(reason.of());
            case MORE_EVENTS ->
                "rebuilt or replaced " + times(reason.of() + reason.by()) + " times a year instead of "
                        + times(reason.of());
            case LESS_POWER -> show(reason.by(), Dimension.POWER) + " less drawn, day and night";
            case MORE_POWER -> show(reason.by(), Dimension.POWER) + " more drawn, day and night";
            case CHEAPER -> show(reason.by(), Dimension.MONEY) + " a year cheaper over " + years();
            case DEARER -> show(reason.by(), Dimension.MONEY) + " a year dearer over " + years();
            case ONE_FAILURE ->
                "one failure takes the air of " + counted(reason.by(), "outlet") + "; today it takes that of "
                        + count(reason.of()) + " at most";
        };
    }

    private String instead(Reason reason) {
        return " instead of " + count(reason.of()) + ")";
    }

    private static String counted(double count, String thing) {
        return Sentences.counted(Math.round(count), thing);
    }

    private String count(double count) {
        return show(count, Dimension.COUNT);
    }

    private String times(double number) {
        return BesideRows.times(number, quantities);
    }

    private String flow(double m3PerS) {
        return show(m3PerS, Dimension.AIR_FLOW);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
