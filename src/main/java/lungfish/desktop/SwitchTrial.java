package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.drawing.Shown;

/** Shows the valves as they are set, or as they should be. */
final class SwitchTrial extends Act {
    private final transient WindowPane window;

    SwitchTrial(WindowPane window) {
        super("Switch valves", 'V', menuKey(KeyEvent.VK_T));
        this.window = window;
        window.view().onChange(this::tell);
    }

    @Override
    void act() {
        window.view().show(other());
    }

    private Shown other() {
        return switch (window.view().shown()) {
            case AS_IT_SHOULD_BE_SET -> Shown.AS_IT_IS_SET;
            case AS_IT_IS_SET -> Shown.AS_IT_SHOULD_BE_SET;
        };
    }

    private void tell() {
        rename(
                switch (other()) {
                    case AS_IT_IS_SET -> "Show valves as they are set";
                    case AS_IT_SHOULD_BE_SET -> "Show valves as they should be set";
                });
    }
}
