package lungfish.measured;

/**
 * Something that may have happened, and how probable that is.
 *
 * @param happening the likeliest size of it
 * @param probability of the culprit, whatever its size
 */
public record Suspect(Culprit culprit, Happening happening, double probability) {}
