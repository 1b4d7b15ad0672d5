package lungfish.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import lungfish.json.JsonWriter;

/** Keys that always stand in a plan: what is not known is null, not left out. */
final class Keys {
    private Keys() {}

    /** A number; null where it is absent or not finite. */
    static void number(JsonWriter out, String key, OptionalDouble value) {
        if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
            out.number(key, value.getAsDouble());
        } else {
            out.nothing(key);
        }
    }

    static void number(JsonWriter out, String key, double value) {
        number(out, key, OptionalDouble.of(value));
    }

    static void text(JsonWriter out, String key, Optional<String> value) {
        value.ifPresentOrElse(there -> out.text(key, there), () -> out.nothing(key));
    }

    static void word(JsonWriter out, String key, Optional<? extends Enum<?>> value) {
        value.ifPresentOrElse(there -> out.word(key, there), () -> out.nothing(key));
    }

    static <T> void object(JsonWriter out, String key, Optional<T> value, BiConsumer<JsonWriter, T> fields) {
        value.ifPresentOrElse(there -> out.object(key, inner -> fields.accept(inner, there)), () -> out.nothing(key));
    }
}
