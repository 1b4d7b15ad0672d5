package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.quantity.DisplayUnits;

/** Shows everything in the other units. */
final class SwitchUnits extends Act {
    private final transient WindowPane window;

    SwitchUnits(WindowPane window) {
        super("Switch units", 'U', menuKey(KeyEvent.VK_U));
        this.window = window;
        window.view().onChange(this::tell);
    }

    @Override
    void act() {
        window.view().desk().showIn(other());
    }

    private DisplayUnits other() {
        return switch (window.view().desk().units()) {
            case METRIC -> DisplayUnits.US;
            case US -> DisplayUnits.METRIC;
        };
    }

    private void tell() {
        rename(
                switch (other()) {
                    case METRIC -> "Show metric units";
                    case US -> "Show US units";
                });
    }
}
