package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens what keeps the air on when something fails: batteries, inverter, generator, alarm, circuits. */
final class SayBackup extends Act {
    private final transient WindowPane window;

    SayBackup(WindowPane window) {
        super("Backup: what there is…", 'U', shiftMenuKey(KeyEvent.VK_B));
        this.window = window;
    }

    @Override
    void act() {
        window.side().openBackup();
    }
}
