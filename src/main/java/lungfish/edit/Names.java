package lungfish.edit;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as keepers give them: one line, and for what is copied the next in a row. */
final class Names {
    private static final Pattern NUMBER_LAST = Pattern.compile("(.*?)(\\d{1,6})");
    private static final Pattern LETTER_LAST = Pattern.compile("(.* |)([A-Y])");

    private Names() {}

    /** What is wrong with a name as typed. */
    static Optional<Refused> trouble(String name) {
        boolean good = !name.isBlank() && name.codePoints().allMatch(Names::isPrintable);
        return good ? Optional.empty() : Optional.of(Refused.because("A name is one line of text.", "Type one."));
    }

    private static boolean isPrintable(int c) {
        boolean halfOfAPair = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return !Character.isISOControl(c) && !halfOfAPair;
    }

    /** The name itself where nobody has it, otherwise the next in its row: "Rack C" after "Rack B", "Fry 4" after "Fry 3". */
    static String unique(String wanted, Set<String> taken) {
        String name = wanted;
        while (taken.contains(name)) {
            name = next(name);
        }
        return name;
    }

    private static String next(String name) {
        Matcher number = NUMBER_LAST.matcher(name);
        if (number.matches()) {
            return number.group(1) + (Integer.parseInt(number.group(2)) + 1);
        }
        Matcher letter = LETTER_LAST.matcher(name);
        if (letter.matches()) {
            return letter.group(1) + (char) (letter.group(2).charAt(0) + 1);
        }
        return name + " 2";
    }
}
