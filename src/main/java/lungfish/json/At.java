package lungfish.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One value being read. Each method gives what stands here as one type; where it cannot, it tells a problem and gives a
 * placeholder (NaN, 0, empty text, the first constant, an empty list), so that reading goes on and tells the rest.
 */
public final class At {
    private static final double LARGEST_WHOLE = 1L << 53;

    private final Json node;
    private final Problems problems;

    At(Json node, Problems problems) {
        this.node = node;
        this.problems = problems;
    }

    public Place place() {
        return node.place();
    }

    /** Tells a problem with what stands here. */
    public void problem(String found, String expected) {
        problems.add(place(), found, expected);
    }

    /** Tells a problem that was found elsewhere, in what was read so far. */
    public void tell(Problem problem) {
        problems.add(problem);
    }

    /** Whether the word null stands here. */
    public boolean isNull() {
        return node instanceof Json.Null;
    }

    /** Whether a value is here at all. */
    public boolean isThere() {
        return !(node instanceof Json.Gap);
    }

    /** A finite number; NaN as the placeholder. */
    public double number(Range range) {
        String expected = "a number" + range.words();
        if (!(node instanceof Json.Num number)) {
            return refused(expected, Double.NaN);
        }
        double x = number.value();
        return range.holds(x) ? x : refused(expected, Double.NaN);
    }

    /** A whole number, which may also be written as 2.0; 0 as the placeholder. */
    public int whole(int least, int most) {
        String expected = "a whole number" + Range.between(least, most).words();
        if (!(node instanceof Json.Num number)) {
            return refused(expected, 0);
        }
        double x = number.value();
        boolean whole = Math.abs(x) <= LARGEST_WHOLE && x == Math.rint(x);
        return whole && x >= least && x <= most ? (int) x : refused(expected, 0);
    }

    public boolean truth() {
        return node instanceof Json.Truth truth ? truth.value() : refused("true or false", false);
    }

    /** A text of one line, not blank. */
    public String text() {
        return text("a text of one line, not empty", Letters::isLine);
    }

    /** A text that may run over several lines. */
    public String prose() {
        return text("a text without control characters, not empty", Letters::isProse);
    }

    /** A name for a thing: letters, digits, dot, hyphen and underscore, at most 64. */
    public String id() {
        return text("an id of letters, digits, '.', '-' and '_', at most 64 of them", Letters::isId);
    }

    private String text(String expected, Function<String, Boolean> allowed) {
        boolean good = node instanceof Json.Text text && allowed.apply(text.value());
        return good ? ((Json.Text) node).value() : refused(expected, "");
    }

    /** A constant of an enum, written in snake_case. */
    public <E extends Enum<E>> E word(Class<E> type) {
        List<E> all = List.of(type.getEnumConstants());
        List<String> words = all.stream().map(At::wordOf).toList();
        return all.get(Math.max(0, words.indexOf(choice(words))));
    }

    /** One of several texts; empty as the placeholder. */
    String choice(Collection<String> allowed) {
        String written = node instanceof Json.Text text ? text.value() : "";
        return allowed.contains(written) ? written : refused(Nearest.offer(written, allowed), "");
    }

    /** How a constant is written. */
    public static String wordOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** A list of things. */
    public <T> List<T> list(Function<At, T> item) {
        List<T> all = new ArrayList<>();
        if (node instanceof Json.Arr array) {
            array.items().forEach(each -> all.add(item.apply(new At(each, problems))));
        } else {
            refused("a list", 0);
        }
        return all;
    }

    /** An object, whose keys are then checked: those twice there and those not asked for are problems. */
    public <T> T object(Function<Fields, T> reader) {
        boolean there = node instanceof Json.Obj;
        if (!there) {
            refused("an object", 0);
        }
        Fields fields = there ? new Fields((Json.Obj) node, problems) : Fields.gap(place(), problems);
        T value = reader.apply(fields);
        fields.close();
        return value;
    }

    private <T> T refused(String expected, T placeholder) {
        if (isThere()) {
            problem("found " + node.words(), expected);
        } else if (!((Json.Gap) node).told()) {
            problem("this key is missing", expected);
        }
        return placeholder;
    }
}
