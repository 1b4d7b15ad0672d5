package lungfish.drawing;

import lungfish.growth.HeadroomMap;

/**
 * What is laid over a room to show where it can grow.
 *
 * @param isCurrent whether the map is that of the room as it is now; an older one is drawn soft
 */
public record GrowthLaid(HeadroomMap map, boolean isCurrent) {}
