package lungfish.quantity;

import java.text.Normalizer;
import java.util.Locale;

/** What a person typed, in plain signs: lower case, ² as 2, ½ as 1/2, curly quotes as straight, no degree sign, "in." as "in". */
final class Spelling {
    private static final String FRACTIONS = "[½¼¾⅓⅔⅛⅜⅝⅞]";
    private static final String FEET_MARKS = "[\u2032\u2018\u2019\u00b4`]";
    private static final String INCH_MARKS = "[\u2033\u201c\u201d]|''";
    private static final String MINUS_SIGNS = "[\u2212\u2013\u2014]";

    private Spelling() {}

    static String plain(String text) {
        String apart = text.replaceAll(FRACTIONS, " $0")
                .replaceAll("\u00ba", "\u00b0")
                .replaceAll(INCH_MARKS, "\"")
                .replaceAll(FEET_MARKS, "'");
        return Normalizer.normalize(apart, Normalizer.Form.NFKC)
                .replace('\u2044', '/')
                .replaceAll(MINUS_SIGNS, "-")
                .replaceAll("''", "\"")
                .replace("\u00b0", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("(\\p{L})\\.", "$1")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
