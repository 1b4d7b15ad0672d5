package lungfish;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Marks a test that needs a live display. Without one it is skipped, and says so; {@code .ci/run} always has one. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
public @interface NeedsDisplay {
    /** Asks the display once for all tests. */
    final class Condition implements ExecutionCondition {
        private static final boolean IS_THERE = Display.isUsable();

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (IS_THERE) {
                return ConditionEvaluationResult.enabled("there is a live display");
            }
            String reason = "SKIPPED, for there is no live display: " + context.getDisplayName();
            System.out.println(reason);
            return ConditionEvaluationResult.disabled(reason);
        }
    }
}
