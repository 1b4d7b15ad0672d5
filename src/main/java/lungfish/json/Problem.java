package lungfish.json;

/**
 * What is wrong with a file, and where.
 *
 * @param path JSON Pointer (RFC 6901) of the place; empty for the whole file
 * @param found what stands there, as a clause: {@code "1.8 is deeper than the tank is high (0.45)"}
 * @param expected what may stand there, fit to follow the word "Expected": {@code "at most 0.45, measured from …"}
 */
public record Problem(String path, String found, String expected) {
    /** Place, trouble and remedy in one line. */
    public String sentence() {
        return (path.isEmpty() ? "the file" : path) + ": " + found + ". Expected " + expected + ".";
    }

    @Override
    public String toString() {
        return sentence();
    }
}
