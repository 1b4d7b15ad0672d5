package lungfish.quantity;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a quantity of one dimension: one number with its unit, or several of units that grow smaller ("6 ft 3 in",
 * "7 h 20 min", "6' 3"). The text is walked once, so no text is slow.
 */
final class QuantityReader {
    private static final int LONGEST_TEXT = 100;

    /** What a number without a unit means behind a number with one. */
    private static final Map<Unit, Unit> NEXT_SMALLER = Map.of(
            Units.FT, Units.IN,
            Units.H, Units.MIN,
            Units.MIN, Units.S,
            Units.LB, Units.OZ);

    private final Dimension dimension;
    private final Family family;
    private final Optional<Unit> unspoken;

    QuantityReader(Dimension dimension, DisplayUnits units) {
        this.dimension = dimension;
        this.family = Family.of(dimension);
        this.unspoken = Faces.unspoken(dimension, units);
    }

    Parsed read(String typed) {
        if (typed.length() > LONGEST_TEXT) {
            return problem("a text of " + typed.length() + " characters");
        }
        String text = Spelling.plain(typed);
        return text.isEmpty() ? problem("nothing") : read(new Cursor(text), "'" + typed.strip() + "'");
    }

    private Parsed read(Cursor cursor, String typed) {
        OptionalDouble first = cursor.number();
        if (first.isEmpty()) {
            return problem(typed + because(cursor.complaint(), "no number in front"));
        }
        Optional<Unit> unit = cursor.unit(family.units());
        if (unit.isEmpty() && !cursor.isAtEnd()) {
            return problem(
                    typed + because(strange(cursor), "'" + cursor.rest() + "' is not a unit of " + family.kind()));
        }
        Optional<Unit> meant = unit.or(() -> unspoken);
        if (meant.isEmpty()) {
            return problem(typed + ", without a unit");
        }
        double si = meant.get().toSi(first.getAsDouble());
        return cursor.isAtEnd() ? checked(si, typed) : more(cursor, typed, si, meant.get());
    }

    /** The smaller parts behind the first; a minus before the first takes all of them away. */
    private Parsed more(Cursor cursor, String typed, double firstSi, Unit firstUnit) {
        double sizeSi = Math.abs(firstSi);
        Unit before = firstUnit;
        while (!cursor.isAtEnd()) {
            cursor.skipHyphen();
            OptionalDouble number = cursor.number();
            Optional<Unit> unspokenHere = Optional.ofNullable(NEXT_SMALLER.get(before));
            Optional<Unit> unit = cursor.unit(family.units()).or(() -> unspokenHere);
            if (number.isEmpty() || number.getAsDouble() < 0 || unit.isEmpty() || !isSmaller(unit.get(), before)) {
                return problem(typed + because(cursor.complaint(), "more than one quantity"));
            }
            before = unit.get();
            sizeSi += before.toSi(number.getAsDouble());
        }
        return checked(firstSi < 0 ? -sizeSi : sizeSi, typed);
    }

    private boolean isSmaller(Unit unit, Unit before) {
        boolean hasParts =
                switch (dimension) {
                    case LENGTH, DEPTH, BORE, ALTITUDE, DURATION, MASS -> true;
                    default -> false;
                };
        return hasParts && unit.siPerUnit() < before.siPerUnit();
    }

    private Parsed checked(double si, String typed) {
        if (dimension == Dimension.COUNT && si != Math.rint(si)) {
            return problem(typed);
        }
        if (dimension == Dimension.TEMPERATURE && si < 0) {
            return problem(typed + ", colder than absolute zero");
        }
        return new Parsed.Value(si);
    }

    private Parsed problem(String found) {
        return new Parsed.Problem(found, family.expected());
    }

    private static String because(String why, String otherwise) {
        return ": " + (why.isEmpty() ? otherwise : why);
    }

    /** Says so if a unit of another kind stands at the cursor. */
    private static String strange(Cursor cursor) {
        String rest = cursor.rest();
        return Arrays.stream(Dimension.values())
                .map(Family::of)
                .filter(other -> new Cursor(rest).unit(other.units()).isPresent())
                .findFirst()
                .map(other -> "'" + rest + "' measures " + other.kind())
                .orElse("");
    }
}
