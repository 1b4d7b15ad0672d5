package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Leads to the findings. */
final class ShowFindings extends Act {
    private final transient WindowPane window;

    ShowFindings(WindowPane window) {
        super("Findings", 'G', menuKey(KeyEvent.VK_G));
        this.window = window;
    }

    @Override
    void act() {
        window.below().showFindings();
    }
}
