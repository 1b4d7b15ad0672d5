package lungfish.edit;

import java.util.regex.Pattern;

/** What stands before the decimals in a list: it settles what a comma before three digits means. */
public enum DecimalMark {
    POINT("a point: 12.5"),
    COMMA("a comma: 12,5");

    /** A comma that can only be a decimal one: fewer or more than three digits follow. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?s).*\\d,(?:\\d{1,2}|\\d{4,})(?!\\d).*");

    private static final Pattern POINT_OF_THOUSANDS = Pattern.compile("(?<=\\d)\\.(?=\\d{3}(?!\\d))");
    private static final Pattern COMMA_OF_THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");

    private final String words;

    DecimalMark(String words) {
        this.words = words;
    }

    /** "a comma: 12,5" */
    public String words() {
        return words;
    }

    /** The one that the cells of a list speak for; a point where none does. */
    static DecimalMark of(TankList list) {
        boolean isComma = list.rows().stream()
                .flatMap(row -> row.cells().stream())
                .anyMatch(cell -> DECIMAL_COMMA.matcher(cell).matches());
        return isComma ? COMMA : POINT;
    }

    /** A number as everyone reads it: a decimal point, and nothing between the thousands. */
    String plain(String text) {
        return switch (this) {
            case POINT -> COMMA_OF_THOUSANDS.matcher(text).replaceAll("");
            case COMMA -> POINT_OF_THOUSANDS.matcher(text).replaceAll("").replaceAll("(?<=\\d),(?=\\d)", ".");
        };
    }
}
