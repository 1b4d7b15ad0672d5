package lungfish;

import java.awt.Frame;
import java.awt.Toolkit;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.support.AnnotationSupport;

/** Marks a test that needs a live display. Without one it is skipped, and says so; {@code .ci/run} always has one. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
public @interface NeedsDisplay {
    /** What it does there. */
    For value() default For.SHOWING;

    /** What a test does with a display. */
    enum For {
        /** It shows windows and looks at them. */
        SHOWING,
        /**
         * It takes mouse and keys, as a person would. That needs a window manager, which alone gives a window the focus, and
         * a display that nobody is working at: {@code LUNGFISH_HANDS=1} in the environment says that it is such a one.
         */
        HANDS
    }

    /** Asks the display once for all tests. */
    final class Condition implements ExecutionCondition {
        private static final boolean IS_THERE = Display.isUsable();

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            Optional<String> missing = AnnotationSupport.findAnnotation(context.getElement(), NeedsDisplay.class)
                    .flatMap(need -> missing(need.value()));
            if (missing.isEmpty()) {
                return ConditionEvaluationResult.enabled("all that it needs is there");
            }
            String reason = "SKIPPED, for " + missing.get() + ": " + context.getDisplayName();
            System.out.println(reason);
            return ConditionEvaluationResult.disabled(reason);
        }

        private static Optional<String> missing(For need) {
            if (!IS_THERE) {
                return Optional.of("there is no live display");
            }
            return switch (need) {
                case SHOWING -> Optional.empty();
                case HANDS -> missingForHands();
            };
        }

        private static Optional<String> missingForHands() {
            if (!"1".equals(System.getenv("LUNGFISH_HANDS"))) {
                return Optional.of("mouse and keys may be yours (LUNGFISH_HANDS=1 lends them)");
            }
            boolean isManaged = Toolkit.getDefaultToolkit().isFrameStateSupported(Frame.MAXIMIZED_BOTH);
            return isManaged ? Optional.empty() : Optional.of("the display has no window manager");
        }
    }
}
