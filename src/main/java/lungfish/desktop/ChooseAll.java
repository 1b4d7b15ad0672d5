package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.edit.Selecting;

/** Chooses everything that stands on the floor. */
final class ChooseAll extends Act {
    private final transient View view;

    ChooseAll(WindowPane window) {
        super("Choose all", 'A', menuKey(KeyEvent.VK_A));
        this.view = window.view();
    }

    @Override
    void act() {
        view.select(Selecting.all(view.desk().room()));
    }
}
