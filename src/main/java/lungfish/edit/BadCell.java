package lungfish.edit;

/**
 * A cell of a table that cannot be read.
 *
 * @param row counted from 1, as a spreadsheet counts the lines of what was pasted or read
 * @param column its heading
 * @param found what stands there, and what is wrong with it
 * @param expected what would be understood
 */
public record BadCell(int row, String column, String found, String expected) {
    /** As one line. */
    public String sentence() {
        return "Row " + row + ", " + column + ": " + complaint();
    }

    /** What is wrong and what would be understood, without its place. */
    public String complaint() {
        boolean isSentence = !expected.isEmpty() && Character.isUpperCase(expected.charAt(0));
        return isSentence ? found + ": " + expected : found + ". Expected " + expected + ".";
    }
}
