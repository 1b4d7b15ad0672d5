package lungfish.reason;

import lungfish.quantity.Dimension;

/**
 * A number in an explanation, in SI, shown in the reader's units only at the edge.
 *
 * @param name the place it fills in a sentence: {@code "found"} fills <code>{found}</code>
 * @param si the value, in the SI unit of its dimension
 */
public record Amount(String name, double si, Dimension dimension) {}
