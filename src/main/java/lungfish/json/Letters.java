package lungfish.json;

import java.util.regex.Pattern;

/** Which letters a text may hold. Control characters are kept out: such a text would be printed to terminals. */
final class Letters {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

    private Letters() {}

    static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    static boolean isLine(String text) {
        return !text.isBlank() && text.codePoints().allMatch(Letters::isPrintable);
    }

    static boolean isProse(String text) {
        return !text.isBlank() && text.codePoints().allMatch(c -> c == '\n' || c == '\t' || isPrintable(c));
    }

    private static boolean isPrintable(int c) {
        boolean halfOfAPair = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return !Character.isISOControl(c) && !halfOfAPair;
    }
}
