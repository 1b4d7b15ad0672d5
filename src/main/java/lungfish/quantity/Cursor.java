package lungfish.quantity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a text, from which numbers and units are taken one by one. */
final class Cursor {
    private static final Pattern FRACTION = Pattern.compile("([-+]?)(?:(\\d++)(?: |-))?(\\d++) ?/ ?(\\d++)(?![\\d.,])");
    private static final Pattern DECIMAL =
            Pattern.compile("[-+]? ?(?:\\d++(?:[.,]\\d++)?+|[.,]\\d++)(?:e[-+]?\\d++)?+");

    /** A comma before three digits: a thousand here, a decimal there. */
    private static final Pattern TWO_MEANINGS = Pattern.compile("[-+]? ?\\d{1,3},\\d{3}");

    private final String text;
    private int at;
    private String complaint = "";

    Cursor(String text) {
        this.text = text;
    }

    boolean isAtEnd() {
        skipBlanks();
        return at == text.length();
    }

    /** What is wrong with the number that was not taken; empty if there was none. */
    String complaint() {
        return complaint;
    }

    /** All that was not taken yet. */
    String rest() {
        return text.substring(at).strip();
    }

    /** A hyphen between parts, as in 5'-6". */
    void skipHyphen() {
        skipBlanks();
        at += text.startsWith("-", at) ? 1 : 0;
    }

    private void skipBlanks() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    OptionalDouble number() {
        skipBlanks();
        Matcher fraction = FRACTION.matcher(text).region(at, text.length());
        if (fraction.lookingAt()) {
            at = fraction.end();
            return fraction(fraction);
        }
        Matcher decimal = DECIMAL.matcher(text).region(at, text.length());
        if (decimal.lookingAt()) {
            at = decimal.end();
            return decimal(decimal.group());
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble fraction(Matcher found) {
        double below = Double.parseDouble(found.group(4));
        if (below == 0) {
            return complain("a fraction of zero parts");
        }
        String whole = found.group(2);
        double size = (whole == null ? 0 : Double.parseDouble(whole)) + Double.parseDouble(found.group(3)) / below;
        return finite(found.group(1).equals("-") ? -size : size);
    }

    private OptionalDouble decimal(String digits) {
        if (TWO_MEANINGS.matcher(digits).matches()) {
            return complain("a comma before three digits has two meanings, so leave it out or write a point");
        }
        return finite(Double.parseDouble(digits.replace(" ", "").replace(',', '.')));
    }

    private OptionalDouble finite(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : complain("too large a number");
    }

    private OptionalDouble complain(String why) {
        complaint = why;
        return OptionalDouble.empty();
    }

    /** Takes the unit whose spelling is the longest that stands here; blanks inside the text do not matter. */
    Optional<Unit> unit(List<Unit> known) {
        int end = at;
        Optional<Unit> longest = Optional.empty();
        for (Unit unit : known) {
            int itsEnd = unit.spellings().stream().mapToInt(this::endOf).max().orElse(at);
            longest = itsEnd > end ? Optional.of(unit) : longest;
            end = Math.max(end, itsEnd);
        }
        at = end;
        return longest;
    }

    /** Where a spelling that begins here ends; this place if it does not stand here as a whole word. */
    private int endOf(String spelling) {
        int here = at;
        for (int i = 0; i < spelling.length(); i++) {
            while (here < text.length() && text.charAt(here) == ' ') {
                here++;
            }
            if (here == text.length() || text.charAt(here) != spelling.charAt(i)) {
                return at;
            }
            here++;
        }
        return isWordEnd(here) ? here : at;
    }

    private boolean isWordEnd(int here) {
        return here == text.length()
                || !Character.isLetter(text.charAt(here))
                || !Character.isLetter(text.charAt(here - 1));
    }
}
