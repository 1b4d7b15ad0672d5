package lungfish.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.SwingUtilities;

/** The regions of a window in the order in which F6 walks: header, room, side, below. */
final class Regions {
    /** A region, and what takes the focus to it. */
    record Region(Component component, Runnable enter) {}

    private final List<Region> regions;

    Regions(List<Region> regions) {
        this.regions = List.copyOf(regions);
    }

    void step(int by) {
        int next = Math.floorMod(current() + by, regions.size());
        regions.get(next).enter().run();
    }

    /** The region in which the focus is; before the first where it is in none. */
    private int current() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        for (int i = 0; i < regions.size(); i++) {
            if (owner != null
                    && SwingUtilities.isDescendingFrom(owner, regions.get(i).component())) {
                return i;
            }
        }
        return -1;
    }
}
