package lungfish.desktop;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;

/** A hand at one canvas: events as the mouse and the keys send them. Places are in metres of the drawing. */
final class Hand {
    private final Canvas canvas;

    Hand(Canvas canvas) {
        this.canvas = canvas;
    }

    private void mouse(int id, double xM, double yM, int keys, int clicks) {
        Point2D px = canvas.viewport().px(xM, yM);
        canvas.dispatchEvent(new MouseEvent(
                canvas,
                id,
                0,
                InputEvent.BUTTON1_DOWN_MASK | keys,
                (int) Math.round(px.getX()),
                (int) Math.round(px.getY()),
                clicks,
                false,
                id == MouseEvent.MOUSE_MOVED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1));
    }

    /** Presses the button, and goes there by the middle of the way; the button stays down. */
    void drag(double fromXM, double fromYM, double toXM, double toYM, int keys) {
        mouse(MouseEvent.MOUSE_PRESSED, fromXM, fromYM, keys, 1);
        mouse(MouseEvent.MOUSE_DRAGGED, (fromXM + toXM) / 2, (fromYM + toYM) / 2, keys, 1);
        mouse(MouseEvent.MOUSE_DRAGGED, toXM, toYM, keys, 1);
    }

    void press(double xM, double yM, int keys) {
        mouse(MouseEvent.MOUSE_PRESSED, xM, yM, keys, 1);
    }

    void pull(double xM, double yM, int keys) {
        mouse(MouseEvent.MOUSE_DRAGGED, xM, yM, keys, 1);
    }

    void release(double xM, double yM, int keys) {
        mouse(MouseEvent.MOUSE_RELEASED, xM, yM, keys, 1);
    }

    void dragAndDrop(double fromXM, double fromYM, double toXM, double toYM, int keys) {
        drag(fromXM, fromYM, toXM, toYM, keys);
        release(toXM, toYM, keys);
    }

    void click(double xM, double yM, int keys) {
        mouse(MouseEvent.MOUSE_PRESSED, xM, yM, keys, 1);
        release(xM, yM, keys);
    }

    void move(double xM, double yM) {
        mouse(MouseEvent.MOUSE_MOVED, xM, yM, 0, 0);
    }

    void key(String key) {
        Parts.press(canvas, key);
    }
}
