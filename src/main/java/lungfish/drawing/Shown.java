package lungfish.drawing;

import java.util.OptionalDouble;
import lungfish.network.AsSet;
import lungfish.plan.OutletPlan;
import lungfish.plan.Trials;

/** Which of the two trials is shown: on a drawing and beside it, everything is of the same one. */
public enum Shown {
    AS_IT_SHOULD_BE_SET("valves as they should be set"),
    AS_IT_IS_SET("valves as they are set");

    private final String words;

    Shown(String words) {
        this.words = words;
    }

    /** For titles and legends. */
    public String words() {
        return words;
    }

    /** How the air goes in this trial. */
    public AsSet of(Trials trials) {
        return switch (this) {
            case AS_IT_SHOULD_BE_SET -> trials.shouldBe();
            case AS_IT_IS_SET -> trials.is();
        };
    }

    /** What an outlet's tap has to spare in this trial, Pa; negative: short. */
    public OptionalDouble sparePa(OutletPlan outlet) {
        return switch (this) {
            case AS_IT_SHOULD_BE_SET ->
                outlet.setting().stream()
                        .mapToDouble(setting -> setting.sparePa())
                        .findFirst();
            case AS_IT_IS_SET -> outlet.asSetSparePa();
        };
    }

    /** Whether an outlet is the one with the least spare in this trial. */
    public boolean isIndex(OutletPlan outlet) {
        return switch (this) {
            case AS_IT_SHOULD_BE_SET -> outlet.index();
            case AS_IT_IS_SET -> outlet.asSetIndex();
        };
    }
}
