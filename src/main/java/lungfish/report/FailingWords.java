package lungfish.report;

import lungfish.outage.Drill;
import lungfish.outage.Failing;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** Says what fails in a room, and for how long. */
public final class FailingWords {
    private final Quantities quantities;
    private final Names names;

    public FailingWords(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
    }

    /** The kinds of failure, as a person chooses among them. */
    public static String name(Failing.Kind kind) {
        return switch (kind) {
            case MAINS -> "Mains power";
            case CIRCUIT_TRIPS -> "A circuit trips";
            case BLOWER_STOPS -> "A blower stops";
            case BRANCH_SHUT -> "A pipe is shut off";
            case CHECK_VALVE_STUCK -> "A check valve sticks";
            case AIRLINE_OFF -> "An airline slips off";
            case HOSE_OFF -> "A blower's hose slips off";
        };
    }

    /** "The mains fail", "Main loop is shut off". */
    public String says(Failing what) {
        String part = names.of(what.part());
        return Sentences.capital(
                switch (what.kind()) {
                    case MAINS -> "the mains fail";
                    case CIRCUIT_TRIPS -> part + " trips";
                    case BLOWER_STOPS -> part + " stops";
                    case BRANCH_SHUT -> part + " is shut off";
                    case CHECK_VALVE_STUCK -> "the check valve of " + part + " sticks shut";
                    case AIRLINE_OFF -> "the airline of " + part + " slips off at its valve";
                    case HOSE_OFF -> "the hose of " + part + " slips off";
                });
    }

    /** What fails and how long that lasts, in a sentence. */
    public String scene(Drill drill) {
        String fails = says(drill.scene().what());
        if (drill.backS().isEmpty()) {
            return fails + "; " + untilLater(drill) + " within the "
                    + time(drill.scene().untilS()) + " looked at.";
        }
        String back = time(drill.backS().getAsDouble());
        boolean asked = drill.scene().backS().isPresent();
        return fails + "; " + (asked ? "all is well again after " : "it is noticed and mended after ") + back + ".";
    }

    private static String untilLater(Drill drill) {
        boolean mains = drill.scene().what().kind() == Failing.Kind.MAINS;
        return mains ? "they do not come back" : "it is not mended";
    }

    private String time(double seconds) {
        return quantities.show(seconds, Dimension.DURATION);
    }
}
