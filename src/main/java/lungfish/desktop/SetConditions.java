package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens what the room runs under: temperature, altitude, bleed, age. */
final class SetConditions extends Act {
    private final transient WindowPane window;

    SetConditions(WindowPane window) {
        super("Conditions…", 'C', menuKey(KeyEvent.VK_E));
        this.window = window;
    }

    @Override
    void act() {
        window.side().open(new ConditionsSheet(window.view(), window.side()));
    }
}
