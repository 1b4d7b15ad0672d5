package lungfish.quantity;

import java.util.function.DoubleFunction;
import java.util.function.Function;

/** What came of reading a quantity that a person typed: a number in SI, or what is wrong with it. */
public sealed interface Parsed {
    /** Whichever it is. */
    <R> R match(DoubleFunction<R> value, Function<Problem, R> problem);

    /** A number in the SI unit of its dimension. */
    record Value(double si) implements Parsed {
        @Override
        public <R> R match(DoubleFunction<R> value, Function<Problem, R> problem) {
            return value.apply(si);
        }
    }

    /**
     * Not understood.
     *
     * @param found what was typed, and what is wrong with it
     * @param expected what would be understood
     */
    record Problem(String found, String expected) implements Parsed {
        @Override
        public <R> R match(DoubleFunction<R> value, Function<Problem, R> problem) {
            return problem.apply(this);
        }
    }
}
