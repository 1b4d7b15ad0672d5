package lungfish.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a file: a value, or every problem that stood in its way. Never both, never neither.
 *
 * @param value the value, where there was no problem
 * @param problems all of them; empty where there is a value
 */
public record Reading<T>(Optional<T> value, List<Problem> problems) {
    public Reading {
        problems = List.copyOf(problems);
        if (value.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading has a value or problems");
        }
    }

    public static <T> Reading<T> of(T value) {
        return new Reading<>(Optional.of(value), List.of());
    }

    public static <T> Reading<T> refused(List<Problem> problems) {
        return new Reading<>(Optional.empty(), problems);
    }

    /** One answer for either outcome. */
    public <R> R match(Function<T, R> read, Function<List<Problem>, R> refused) {
        return value.isPresent() ? read.apply(value.get()) : refused.apply(problems);
    }

    /** The same outcome with another value. */
    public <R> Reading<R> map(Function<T, R> change) {
        return new Reading<>(value.map(change), problems);
    }

    /** The value; for callers that know there is one. */
    public T orThrow() {
        return value.orElseThrow(() -> new IllegalStateException("not read: " + problems));
    }
}
