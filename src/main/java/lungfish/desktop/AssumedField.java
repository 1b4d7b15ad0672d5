package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import lungfish.edit.OwnValue;
import lungfish.edit.OwnValues;
import lungfish.plan.Plan;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.report.Sentences;
import lungfish.report.SharedAssumption;

/** Makes the field in which a keeper says what the plan assumes, wherever that is seen. */
final class AssumedField {
    private AssumedField() {}

    /**
     * The field; empty where no one number can be said.
     *
     * @param told takes what is wrong with what was typed; empty when nothing is
     */
    static Optional<QuantityField> of(View view, SharedAssumption assumed, Consumer<String> told) {
        return OwnValues.of(assumed.first().key(), assumed.where())
                .map(value -> field(view, assumed.first(), value, told));
    }

    /** The same for a number in an explanation. */
    static Optional<QuantityField> of(View view, Assumable key, double si, Consumer<String> told) {
        return SharedAssumption.of(view.plan().map(Plan::assumptions).orElse(List.of())).stream()
                .filter(each -> each.first().key() == key && each.first().si() == si)
                .findFirst()
                .flatMap(each -> of(view, each, told));
    }

    private static QuantityField field(View view, Assumption assumption, OwnValue value, Consumer<String> told) {
        QuantityField field = QuantityField.refusing(
                view,
                value.dimension(),
                () -> value.now().apply(view.desk().room()),
                si -> view.refused(value.say(view.desk().room(), si)),
                told);
        boolean isSame = value.dimension() == assumption.dimension();
        field.whenSilent(() -> isSame
                ? new Silence(OptionalDouble.of(assumption.si()), "assumed")
                : Silence.of(view.quantities().show(assumption.si(), assumption.dimension()) + ", assumed"));
        String name = Sentences.capital(assumption.what()) + ", assumed";
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(name);
        return field;
    }
}
