package lungfish.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * A unit that a person reads or types. Its SI value is {@code number × siPerUnit + siAtZero}.
 *
 * @param symbol as shown beside a number
 * @param siPerUnit the SI value of one such unit (of a difference of one, where the scale has its own zero)
 * @param siAtZero the SI value of zero such units: 0 but for degrees
 * @param spellings what is understood when typed, in plain signs without blanks; the symbol is always among them
 */
public record Unit(String symbol, double siPerUnit, double siAtZero, List<String> spellings) {
    public Unit {
        spellings = List.copyOf(spellings);
    }

    static Unit of(String symbol, double siPerUnit, String... otherSpellings) {
        return scale(symbol, siPerUnit, 0.0, otherSpellings);
    }

    static Unit scale(String symbol, double siPerUnit, double siAtZero, String... otherSpellings) {
        List<String> spellings = new ArrayList<>(List.of(otherSpellings));
        spellings.add(symbol);
        return new Unit(
                symbol, siPerUnit, siAtZero, spellings.stream().map(Unit::plain).toList());
    }

    private static String plain(String spelling) {
        return Spelling.plain(spelling).replace(" ", "");
    }

    public double toSi(double number) {
        return number * siPerUnit + siAtZero;
    }

    public double fromSi(double si) {
        return (si - siAtZero) / siPerUnit;
    }
}
