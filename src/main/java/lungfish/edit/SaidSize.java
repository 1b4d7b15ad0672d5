package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Tank;

/** A size as one writes it in one cell: "60 x 30 x 36 cm", "24 × 12 × 16 in"; a unit at the end holds for all three. */
final class SaidSize {
    private static final Pattern THREE =
            Pattern.compile("\\s*(.+?)\\s*[x×*]\\s*(.+?)\\s*[x×*]\\s*(.+?)\\s*", Pattern.CASE_INSENSITIVE);
    private static final Pattern UNIT = Pattern.compile(".*?([\\p{L}\"']+)");

    private SaidSize() {}

    /** Length, from front to back, and height; empty where the text is no such thing. */
    static Optional<Tank.Size> of(String text, Quantities quantities) {
        Matcher three = THREE.matcher(text);
        if (!three.matches()) {
            return Optional.empty();
        }
        Matcher last = UNIT.matcher(three.group(3));
        String unit = last.matches() ? last.group(1) : "";
        List<OptionalDouble> sides = Stream.of(three.group(1), three.group(2), three.group(3))
                .map(side -> sideM(side, unit, quantities))
                .toList();
        boolean isSize = sides.stream().allMatch(side -> side.orElse(0) > 0);
        return isSize
                ? Optional.of(new Tank.Size(
                        sides.get(0).orElseThrow(),
                        sides.get(1).orElseThrow(),
                        sides.get(2).orElseThrow()))
                : Optional.empty();
    }

    private static OptionalDouble sideM(String side, String unit, Quantities quantities) {
        String text = UNIT.matcher(side).matches() ? side : side + " " + unit;
        return quantities
                .parse(text, Dimension.DEPTH)
                .match(si -> OptionalDouble.of(Metres.clean(si)), problem -> OptionalDouble.empty());
    }
}
