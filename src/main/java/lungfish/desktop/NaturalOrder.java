package lungfish.desktop;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The order in which a person lists names: C-2 comes before C-10. */
final class NaturalOrder implements Comparator<String> {
    static final Comparator<String> OF_NAMES = new NaturalOrder().thenComparing(Comparator.naturalOrder());

    private static final Pattern PIECE = Pattern.compile("\\d+|\\D+");

    private NaturalOrder() {}

    @Override
    public int compare(String one, String other) {
        Matcher a = PIECE.matcher(one);
        Matcher b = PIECE.matcher(other);
        while (true) {
            boolean hasA = a.find();
            boolean hasB = b.find();
            if (!hasA || !hasB) {
                return Boolean.compare(hasA, hasB);
            }
            int order = piece(a.group(), b.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int piece(String a, String b) {
        boolean numbers = isNumber(a) && isNumber(b);
        return numbers ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareToIgnoreCase(b);
    }

    private static boolean isNumber(String piece) {
        return Character.isDigit(piece.charAt(0));
    }
}
