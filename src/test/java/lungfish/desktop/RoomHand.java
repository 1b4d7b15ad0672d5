package lungfish.desktop;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;

/** A hand on the room from above, off grid and guides unless told otherwise. Places are in metres of the room. */
final class RoomHand {
    /** Half a pixel of a room drawn at some 60 pixels a metre, and some rounding. */
    static final double PIXEL_M = 0.02;

    private static final int FREELY = InputEvent.ALT_DOWN_MASK;

    private final Bench bench;
    private final RoomCanvas canvas;
    private final Hand hand;

    RoomHand(Bench bench) {
        this.bench = bench;
        this.canvas = bench.pane().center().room();
        this.hand = new Hand(canvas);
        canvas.setSize(900, 700);
        canvas.fit();
    }

    Tool tool() {
        return canvas.tool();
    }

    void press(double xM, double yM) {
        hand.press(xM, yM, FREELY);
    }

    void pull(double xM, double yM) {
        hand.pull(xM, yM, FREELY);
    }

    void release(double xM, double yM) {
        hand.release(xM, yM, FREELY);
    }

    void click(double xM, double yM) {
        hand.click(xM, yM, FREELY);
    }

    /** With Shift. */
    void clickStraight(double xM, double yM) {
        hand.click(xM, yM, FREELY | InputEvent.SHIFT_DOWN_MASK);
    }

    void drag(double fromXM, double fromYM, double toXM, double toYM) {
        hand.dragAndDrop(fromXM, fromYM, toXM, toYM, FREELY);
    }

    void move(double xM, double yM) {
        hand.move(xM, yM);
    }

    /** The pointer leaves the drawing. */
    void goAway() {
        canvas.dispatchEvent(new MouseEvent(canvas, MouseEvent.MOUSE_EXITED, 0, 0, -1, -1, 0, false));
    }

    void key(String key) {
        hand.key(key);
    }

    void act(String name) {
        bench.pane().acts().all().stream()
                .filter(act -> act.name().equals(name))
                .findFirst()
                .orElseThrow()
                .act();
    }
}
