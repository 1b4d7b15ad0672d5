package lungfish.edit;

import java.util.List;

/**
 * Where a dragged rectangle comes to rest.
 *
 * @param dxM what to add to the drag, m; 0 where nothing is near
 * @param dyM what to add to the drag, m
 * @param guides why; empty where nothing is near
 */
public record Snapped(double dxM, double dyM, List<Guide> guides) {
    public Snapped {
        guides = List.copyOf(guides);
    }
}
