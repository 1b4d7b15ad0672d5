package lungfish.sure;

import lungfish.room.Spread;

/**
 * How much of the doubt about the reserve comes from one input.
 *
 * @param width half of it, as the input may be off: m for a depth, else a share
 * @param share of the sum of the variances that each input alone makes, 0 to 1
 * @param alone the reserve, as a share of what the room needs, with only this input off
 */
public record Weight(Spread spread, double width, double share, Band alone) {}
