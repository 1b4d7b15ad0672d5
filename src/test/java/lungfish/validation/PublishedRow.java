package lungfish.validation;

/**
 * One published value.
 *
 * @param by the kind of row: how its group computes it
 * @param published the value, in {@code unit}
 * @param printed the value as the file writes it
 * @param status how far the source itself was seen: re-read, companion, reproduction, from memory, …
 */
public record PublishedRow(
        String id,
        String by,
        String what,
        Inputs inputs,
        double published,
        String printed,
        String unit,
        Tolerance tolerance,
        String source,
        String status) {}
