package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Takes the last edit back. */
final class UndoEdit extends Act {
    private final transient WindowPane window;

    UndoEdit(WindowPane window) {
        super("Undo", 'U', menuKey(KeyEvent.VK_Z));
        this.window = window;
        window.view().onChange(this::tell);
    }

    @Override
    void act() {
        window.view().desk().undo();
    }

    private void tell() {
        Optional<String> step = window.view().desk().history().toUndo();
        setEnabled(step.isPresent());
        rename(step.map(done -> "Undo: " + done).orElse("Undo"));
    }
}
