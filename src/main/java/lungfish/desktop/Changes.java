package lungfish.desktop;

import java.util.Optional;
import lungfish.desk.Age;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** What a headline said of the plan before, where the newer plan of the same room makes it say something else. */
final class Changes {
    private final Subject subject;
    private Optional<Plan> last = Optional.empty();

    Changes(Subject subject) {
        this.subject = subject;
    }

    /**
     * Hears of the plan that is shown now; both are read in the same words, so that another unit is no change.
     *
     * @return empty when it is the same plan, the first one, or that of another room, or when its headline is the same
     */
    Optional<String> hear(Plan now, Age age, Quantities quantities) {
        Optional<Plan> before = last.filter(plan -> !plan.equals(now));
        last = Optional.of(now);
        String says = new Glances(now, age, quantities).of(subject).headline();
        return before.filter(plan -> plan.room().name().equals(now.room().name()))
                .map(plan -> new Glances(plan, age, quantities).of(subject).headline())
                .filter(said -> !said.equals(says));
    }
}
