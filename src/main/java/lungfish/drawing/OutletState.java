package lungfish.drawing;

import java.util.OptionalDouble;
import lungfish.network.DropFlow;
import lungfish.plan.OutletPlan;
import lungfish.sizing.Setting;

/** How an outlet stands; each has a shape of its own, and a word for legends and tooltips. */
public enum OutletState {
    SERVED("served"),
    INDEX("least spare"),
    STARVED("short of air"),
    GREEDY("above its most"),
    PLANNED("planned"),
    CLOSED("no air"),
    UNKNOWN("not solved");

    private final String word;

    OutletState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Against its target alone. */
    public static OutletState of(DropFlow.State state) {
        return switch (state) {
            case CLOSED -> CLOSED;
            case STARVED -> STARVED;
            case SERVED -> SERVED;
            case GREEDY -> GREEDY;
        };
    }

    /** In one of the two trials. */
    public static OutletState of(OutletPlan outlet, Shown shown) {
        return switch (shown) {
            case AS_IT_SHOULD_BE_SET -> asItShouldBe(outlet);
            case AS_IT_IS_SET -> asItIsSet(outlet);
        };
    }

    /** As its valve should be set. */
    static OutletState asItShouldBe(OutletPlan outlet) {
        if (outlet.predictedM3PerS().isEmpty()) {
            return UNKNOWN;
        }
        double gets = outlet.predictedM3PerS().getAsDouble();
        boolean isShort = outlet.setting().map(Setting::sparePa).orElse(0.0) < 0;
        if (gets <= 0) {
            return CLOSED;
        }
        return isShort ? STARVED : greedyOr(gets, outlet, outlet.index() ? INDEX : SERVED);
    }

    /** As its valve is set. */
    static OutletState asItIsSet(OutletPlan outlet) {
        return outlet.asSet().map(gets -> asItIsSet(outlet, gets)).orElse(UNKNOWN);
    }

    private static OutletState asItIsSet(OutletPlan outlet, DropFlow gets) {
        return switch (gets.state()) {
            case CLOSED -> CLOSED;
            case STARVED -> STARVED;
            case SERVED, GREEDY -> greedyOr(gets.freeM3PerS(), outlet, outlet.asSetIndex() ? INDEX : SERVED);
        };
    }

    private static OutletState greedyOr(double getsM3PerS, OutletPlan outlet, OutletState otherwise) {
        OptionalDouble most = outlet.need().mostM3PerS();
        return most.isPresent() && getsM3PerS > most.getAsDouble() ? GREEDY : otherwise;
    }
}
