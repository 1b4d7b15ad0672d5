package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Tank;

/**
 * Fish as a keeper writes them on one line, {@code 20 rainbows, 8 g; 4 loaches, 12 g}: how many, what they are, and what one
 * of them weighs. A mass that stands there as it was shown is still the very mass that was shown.
 */
public final class FishText {
    /** How it is written, for who has not seen it yet. */
    public static final String EXAMPLE = "20 rainbows, 8 g; 4 loaches, 12 g";

    private static final Pattern ONE = Pattern.compile("(\\d{1,9})(?:\\s*[x×])?\\s+(\\S.*?)\\s*,\\s*([^,]+)");

    private FishText() {}

    /** As it is shown; empty where no fish are said. */
    public static String of(List<Tank.Fish> fish, Quantities quantities) {
        return fish.stream()
                .map(each -> each.count() + " " + each.name() + ", " + quantities.show(each.massKg(), Dimension.MASS))
                .collect(Collectors.joining("; "));
    }

    /**
     * Reads it, and does something with the fish; refused where it says no fish.
     *
     * @param before what was shown, whose masses are kept where the text still says them
     */
    static Attempt read(
            String text, List<Tank.Fish> before, Quantities quantities, Function<List<Tank.Fish>, Attempt> then) {
        List<Tank.Fish> fish = new ArrayList<>();
        for (String part : parts(text)) {
            Matcher one = ONE.matcher(part);
            OptionalDouble massKg = one.matches() ? massKg(one.group(3), before, quantities) : OptionalDouble.empty();
            if (massKg.isEmpty()) {
                return Refused.because(
                        "\"" + part + "\" does not say how many, what they are, and what one of them weighs.",
                        "Write them like this: " + EXAMPLE + ".");
            }
            fish.add(new Tank.Fish(one.group(2), Integer.parseInt(one.group(1)), massKg.getAsDouble()));
        }
        return then.apply(List.copyOf(fish));
    }

    private static List<String> parts(String text) {
        return Stream.of(text.split(";", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static OptionalDouble massKg(String text, List<Tank.Fish> before, Quantities quantities) {
        String plain = text.strip();
        OptionalDouble shown = before.stream()
                .mapToDouble(Tank.Fish::massKg)
                .filter(kg -> quantities.show(kg, Dimension.MASS).equals(plain))
                .findFirst();
        return shown.isPresent()
                ? shown
                : quantities.parse(plain, Dimension.MASS).match(OptionalDouble::of, problem -> OptionalDouble.empty());
    }
}
