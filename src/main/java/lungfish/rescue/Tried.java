package lungfish.rescue;

import java.util.OptionalDouble;

/**
 * Means that were tried by themselves.
 *
 * @param set what was added: the least of its kind that keeps as many tanks as the most of it would
 * @param outcome of all hazards
 * @param fullAgainS how long the charger takes to fill the batteries after they have carried the room, s; absent where there are
 *     none
 */
public record Tried(MeansSet set, Outcome outcome, OptionalDouble fullAgainS) {}
