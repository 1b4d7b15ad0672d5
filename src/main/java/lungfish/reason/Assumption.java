package lungfish.reason;

import lungfish.quantity.Dimension;

/**
 * A value that the room does not give and the plan therefore assumed, visibly.
 *
 * @param key what the room could say
 * @param what the property in plain words, "room temperature"
 * @param because why this value, with its source or "common practice, no source"
 */
public record Assumption(Assumable key, PartId where, String what, double si, Dimension dimension, String because) {}
