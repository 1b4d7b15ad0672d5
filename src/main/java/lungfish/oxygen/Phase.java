package lungfish.oxygen;

/**
 * From when on a tank breathes so, s. It lasts until the next.
 *
 * @param fed whether its fish have just had a large meal, where the balance knows of one
 */
public record Phase(double fromS, Breath breath, boolean fed) {}
