package lungfish.quantity;

import java.util.regex.Matcher;

/**
 * How one person reads and types numbers: their units and the label of their currency.
 *
 * <p>Shown: at most three figures (money and counts whole), the unit beside every number, a decimal point in every
 * locale. Typed: any unit of either system, whatever is shown.
 *
 * @param currency "$", "EUR" or whatever the room says; empty if it says nothing
 */
public record Quantities(DisplayUnits units, String currency) {
    /** Without a currency. */
    public static Quantities in(DisplayUnits units) {
        return new Quantities(units, "");
    }

    /** The number with its unit; "unknown" if it is not a number, "without end" if it is infinite. */
    public static String show(double si, Dimension dimension, DisplayUnits units) {
        return in(units).show(si, dimension);
    }

    /**
     * What {@code text} says, in SI. A number without a unit is in the unit that is shown.
     *
     * @return never throws: what cannot be understood comes back as a problem
     */
    public static Parsed parse(String text, Dimension dimension, DisplayUnits units) {
        return in(units).parse(text, dimension);
    }

    /** The number with its unit; "unknown" if it is not a number, "without end" if it is infinite. */
    public String show(double si, Dimension dimension) {
        if (Double.isNaN(si)) {
            return "unknown";
        }
        if (Double.isInfinite(si)) {
            return "without end";
        }
        String shown = Faces.of(dimension, units).show(si);
        return isMoney(dimension) ? withCurrency(shown) : shown;
    }

    /** The number alone, as it is shown, where its unit or its currency stands beside it. */
    public String number(double si, Dimension dimension) {
        String shown = new Quantities(units, "").show(si, dimension);
        int end = shown.indexOf(' ');
        return end < 0 || !Double.isFinite(si) ? shown : shown.substring(0, end);
    }

    /** A length as one marks it with a tape on a workpiece: whole millimetres, or feet and sixteenths of an inch. */
    public String tape(double m) {
        return units == DisplayUnits.US ? Measures.sixteenths(m) : Math.round(m * 1000) + " mm";
    }

    private static boolean isMoney(Dimension dimension) {
        return dimension == Dimension.MONEY || dimension == Dimension.ENERGY_PRICE;
    }

    /** A sign stands before the amount, a word behind it: "-$12", "12 EUR per kWh". */
    private String withCurrency(String shown) {
        boolean isSign = currency.codePoints().noneMatch(Character::isLetter);
        String behind = isSign ? "" : " " + currency;
        String before = isSign ? currency : "";
        return shown.replaceFirst(
                "^(-?)([0-9.]+)", "$1" + Matcher.quoteReplacement(before) + "$2" + Matcher.quoteReplacement(behind));
    }

    /** What {@code text} says, in SI; see {@link #parse(String, Dimension, DisplayUnits)}. */
    public Parsed parse(String text, Dimension dimension) {
        String amount = isMoney(dimension) && !currency.isEmpty() ? text.replace(currency, "") : text;
        return new QuantityReader(dimension, units).read(amount);
    }
}
