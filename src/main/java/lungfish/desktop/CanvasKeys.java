package lungfish.desktop;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import lungfish.edit.Moves;

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

    /** Each tool has its letter. */
    static void bindTools(Canvas canvas, ToolBelt belt) {
        belt.tools().forEach(tool -> bind(canvas, String.valueOf(tool.key()), () -> belt.take(tool)));
    }

    /** With Alt the arrows move what is chosen by a step of the grid, with Shift too by a fifth of it. */
    static void bindNudging(Canvas canvas) {
        nudge(canvas, "LEFT", -1, 0);
        nudge(canvas, "RIGHT", 1, 0);
        nudge(canvas, "UP", 0, -1);
        nudge(canvas, "DOWN", 0, 1);
    }

    private static void nudge(Canvas canvas, String arrow, int dx, int dy) {
        View view = canvas.view();
        bind(canvas, "alt " + arrow, () -> nudge(view, dx * Resting.gridM(view), dy * Resting.gridM(view)));
        bind(canvas, "shift alt " + arrow, () -> nudge(view, dx * Resting.fineM(view), dy * Resting.fineM(view)));
    }

    private static void nudge(View view, double dxM, double dyM) {
        view.attempt((room, chosen) -> Moves.by(room, Handles.carriers(room, chosen), dxM, dyM));
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
