package lungfish.desktop;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** The keys of a canvas that has the focus: arrows walk from part to part, with Shift they pan. */
final class CanvasKeys {
    private static final double STEP = 40;

    private CanvasKeys() {}

    static void bindPanning(Canvas canvas) {
        bind(canvas, "shift LEFT", () -> canvas.pan(step(canvas), 0));
        bind(canvas, "shift RIGHT", () -> canvas.pan(-step(canvas), 0));
        bind(canvas, "shift UP", () -> canvas.pan(0, step(canvas)));
        bind(canvas, "shift DOWN", () -> canvas.pan(0, -step(canvas)));
    }

    private static double step(Canvas canvas) {
        return canvas.view().px(STEP);
    }

    static void bind(Canvas canvas, String key, Runnable does) {
        canvas.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        canvas.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }
}
