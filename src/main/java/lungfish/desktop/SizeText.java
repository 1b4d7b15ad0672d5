package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Makes all text, and the drawings with it, larger or smaller. */
final class SizeText extends Act {
    private static final int STEP = 25;

    private final transient WindowPane window;
    private final int stepPercent;

    private SizeText(WindowPane window, String name, int key, int stepPercent) {
        super(name, name.charAt(0), shiftMenuKey(key));
        this.window = window;
        this.stepPercent = stepPercent;
    }

    static SizeText larger(WindowPane window) {
        return new SizeText(window, "Larger text", KeyEvent.VK_EQUALS, STEP);
    }

    static SizeText smaller(WindowPane window) {
        return new SizeText(window, "Smaller text", KeyEvent.VK_MINUS, -STEP);
    }

    @Override
    void act() {
        window.home().sizeText(stepPercent);
    }
}
