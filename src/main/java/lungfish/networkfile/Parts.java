package lungfish.networkfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes parts only of numbers that were read; where one was not, its problem is told already. */
final class Parts {
    private Parts() {}

    /** The part, unless one of its numbers is the placeholder NaN. */
    static <T> Optional<T> made(Supplier<T> part, double... numbers) {
        return Arrays.stream(numbers).anyMatch(Double::isNaN) ? Optional.empty() : Optional.of(part.get());
    }

    static <T> List<T> present(List<Optional<T>> parts) {
        return parts.stream().flatMap(Optional::stream).toList();
    }
}
