package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.edit.Clip;
import lungfish.edit.Deleting;

/** Keeps a copy of what is chosen, to be pasted; may take it away. */
final class CopyChosen extends Act {
    private final transient View view;
    private final boolean takes;

    CopyChosen(WindowPane window, boolean takes) {
        super(takes ? "Cut" : "Copy", takes ? 'T' : 'C', menuKey(takes ? KeyEvent.VK_X : KeyEvent.VK_C));
        this.view = window.view();
        this.takes = takes;
    }

    @Override
    void act() {
        Clip clip = Clip.of(view.desk().room(), view.selection());
        if (!clip.isEmpty()) {
            view.copied(clip);
        }
        if (takes) {
            view.attempt(Deleting::of);
        }
    }
}
