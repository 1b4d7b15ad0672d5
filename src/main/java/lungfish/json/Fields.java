package lungfish.json;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The keys of one object being read. A key is known once it was asked for; what is left over at the end is a problem.
 * Where a key stands twice the first is read and the second told.
 */
public final class Fields {
    private final Place place;
    private final Problems problems;
    private final boolean there;
    private final Map<String, Json> values = new LinkedHashMap<>();
    private final Set<String> known = new LinkedHashSet<>();
    private boolean restForgiven;

    Fields(Json.Obj object, Problems problems) {
        this(object.place(), problems, true);
        Set<String> told = new HashSet<>();
        for (Json.Entry entry : object.entries()) {
            boolean again = values.putIfAbsent(entry.key(), entry.value()) != null;
            if (again && told.add(entry.key())) {
                problems.add(place.key(entry.key()), "this key stands here more than once", "it once");
            }
        }
    }

    private Fields(Place place, Problems problems, boolean there) {
        this.place = place;
        this.problems = problems;
        this.there = there;
    }

    static Fields gap(Place place, Problems problems) {
        return new Fields(place, problems, false);
    }

    public Place place() {
        return place;
    }

    /** Tells a problem with the value of a key. */
    public void problem(String key, String found, String expected) {
        problems.add(place.key(key), found, expected);
    }

    /** The value of a key that must be there; where it is not, reading from it tells so, with what was expected. */
    public At required(String key) {
        known.add(key);
        Json value = values.get(key);
        return new At(value == null ? new Json.Gap(place.key(key), !there) : value, problems);
    }

    /** The value of a key that may be left out. */
    public Optional<At> optional(String key) {
        known.add(key);
        return Optional.ofNullable(values.get(key)).map(value -> new At(value, problems));
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    public double number(String key, Range range) {
        return required(key).number(range);
    }

    public OptionalDouble maybeNumber(String key, Range range) {
        Optional<At> value = optional(key);
        return value.isPresent() ? OptionalDouble.of(value.get().number(range)) : OptionalDouble.empty();
    }

    public double numberOr(String key, Range range, double otherwise) {
        return maybeNumber(key, range).orElse(otherwise);
    }

    public String text(String key) {
        return required(key).text();
    }

    public Optional<String> maybeText(String key) {
        return optional(key).map(At::text);
    }

    public String id(String key) {
        return required(key).id();
    }

    public Optional<String> maybeId(String key) {
        return optional(key).map(At::id);
    }

    public Optional<Boolean> maybeTruth(String key) {
        return optional(key).map(At::truth);
    }

    public <E extends Enum<E>> E word(String key, Class<E> type) {
        return required(key).word(type);
    }

    public <E extends Enum<E>> Optional<E> maybeWord(String key, Class<E> type) {
        return optional(key).map(at -> at.word(type));
    }

    public <T> T object(String key, Function<Fields, T> reader) {
        return required(key).object(reader);
    }

    public <T> Optional<T> maybeObject(String key, Function<Fields, T> reader) {
        return optional(key).map(at -> at.object(reader));
    }

    /** A list that must be there; its items are objects. */
    public <T> List<T> objects(String key, Function<Fields, T> item) {
        return required(key).list(at -> at.object(item));
    }

    /** A list of objects; left out, it is empty. */
    public <T> List<T> maybeObjects(String key, Function<Fields, T> item) {
        return optional(key).map(at -> at.list(each -> each.object(item))).orElse(List.of());
    }

    /**
     * One of several shapes, told apart by the text under a key.
     *
     * @param shapes a reader for each text that may stand there
     * @param placeholder what is given where the text is none of them
     */
    public <T> T oneOf(String key, Map<String, Function<Fields, T>> shapes, T placeholder) {
        String written = required(key).choice(new TreeSet<>(shapes.keySet()));
        Function<Fields, T> shape = shapes.get(written);
        if (shape == null) {
            forgiveTheRest();
            return placeholder;
        }
        return shape.apply(this);
    }

    /** Leaves unread what was not asked for, without a problem: where the object as a whole is refused already. */
    public void forgiveTheRest() {
        restForgiven = true;
    }

    void close() {
        if (restForgiven) {
            return;
        }
        for (String key : values.keySet()) {
            if (!known.contains(key)) {
                problem(key, "this key is not known here", Nearest.offer(key, known));
            }
        }
    }
}
