package lungfish.desktop;

/**
 * The keys of a canvas that has the focus: letters take tools, arrows walk from part to part, with Shift they pan, with Alt
 * they move what is chosen. With a drawing tool in the hand they move its aim.
 */
final class CanvasKeys {
    private static final double STEP = 40;

    private CanvasKeys() {}

    static void bindAll(Canvas canvas, ToolBelt belt) {
        belt.tools().forEach(tool -> Keys.bind(canvas, String.valueOf(tool.key()), () -> belt.take(tool)));
        Keys.bind(canvas, "ENTER", canvas::finish);
        Keys.bind(canvas, "ESCAPE", canvas::escape);
        Keys.bind(canvas, "BACK_SPACE", () -> back(canvas));
        Keys.bind(canvas, "PAGE_UP", () -> raise(canvas, 1));
        Keys.bind(canvas, "PAGE_DOWN", () -> raise(canvas, -1));
        bind(canvas, "LEFT", -1, 0);
        bind(canvas, "RIGHT", 1, 0);
        bind(canvas, "UP", 0, -1);
        bind(canvas, "DOWN", 0, 1);
    }

    /** One arrow, alone and with its companions: with Alt a step of the grid, with Shift too a fifth of it. */
    private static void bind(Canvas canvas, String arrow, int dx, int dy) {
        Keys.bind(canvas, arrow, () -> arrow(canvas, dx, dy));
        Keys.bind(canvas, "ctrl " + arrow, () -> jump(canvas, dx, dy));
        Keys.bind(canvas, "shift " + arrow, () -> canvas.pan(-dx * step(canvas), -dy * step(canvas)));
        Keys.bind(canvas, "alt " + arrow, () -> canvas.nudge(dx, dy, false));
        Keys.bind(canvas, "shift alt " + arrow, () -> canvas.nudge(dx, dy, true));
    }

    /** On to the next thing; with a drawing tool the aim. */
    private static void arrow(Canvas canvas, int dx, int dy) {
        if (canvas.tool().enters()) {
            canvas.walk(dx, dy);
        } else {
            canvas.aim().step(dx, dy, Aim.Step.LONG);
        }
    }

    /** The aim goes on to whatever comes next; with nothing to draw one goes into what is chosen, or out of it. */
    private static void jump(Canvas canvas, int dx, int dy) {
        if (!canvas.tool().enters()) {
            canvas.aim().jump(dx, dy);
        } else if (dy != 0) {
            canvas.delve(dy);
        }
    }

    private static void back(Canvas canvas) {
        canvas.tool().back();
        canvas.follow();
    }

    private static void raise(Canvas canvas, int steps) {
        canvas.tool().raise(steps);
        canvas.repaint();
    }

    private static double step(Canvas canvas) {
        return canvas.view().px(STEP);
    }
}
