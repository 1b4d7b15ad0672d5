package lungfish.rescue;

import java.util.OptionalDouble;

/**
 * What a room keeps in a hazard, by the cautious figure.
 *
 * @param safe tanks that never come down to the danger level
 * @param essentialSafe how many of them are essential
 * @param airFromS when air first goes on, s after the failure; absent: not in this time
 * @param airToS until when it goes on without a break, s; absent with {@code airFromS}
 */
public record Kept(int safe, int essentialSafe, OptionalDouble airFromS, OptionalDouble airToS) {}
