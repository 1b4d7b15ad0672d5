package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Explains the figures of the outlet that is chosen. */
final class AskWhyOutlet extends Act {
    private final transient WindowPane window;

    AskWhyOutlet(WindowPane window) {
        super("Why: the chosen outlet", 'O', menuKey(KeyEvent.VK_5));
        this.window = window;
        window.view().onMark(this::tell);
        tell();
    }

    private void tell() {
        setEnabled(window.view().chosenOutlet().isPresent());
    }

    @Override
    void act() {
        window.view().chosenOutlet().ifPresent(outlet -> window.side().ask(outlet, OutletColumn.SPARE));
    }
}
