package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Does again what was undone. */
final class RedoEdit extends Act {
    private final transient WindowPane window;

    RedoEdit(WindowPane window) {
        super("Redo", 'R', shiftMenuKey(KeyEvent.VK_Z));
        this.window = window;
        window.view().onChange(this::tell);
    }

    @Override
    void act() {
        window.view().desk().redo();
    }

    private void tell() {
        Optional<String> step = window.view().desk().history().toRedo();
        setEnabled(step.isPresent());
        rename(step.map(done -> "Redo: " + done).orElse("Redo"));
    }
}
