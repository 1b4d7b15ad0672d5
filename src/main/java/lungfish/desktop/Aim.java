package lungfish.desktop;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * A hand for someone without a mouse: a cross that the arrows move while a drawing tool is in the hand. Enter presses there;
 * with a tool that drags, Enter again lets go. The first arrow brings it, the mouse takes it away.
 */
final class Aim {
    /** Of the grid, in one press of an arrow. */
    private static final int LONG = 5;

    private final Canvas canvas;
    private @Nullable Point2D at;
    private boolean isFree;
    private boolean isDown;

    Aim(Canvas canvas) {
        this.canvas = canvas;
    }

    /** Whether the keys have the hand. */
    boolean isThere() {
        return at != null;
    }

    /** By so many long steps; with Alt by steps of the grid, with Shift too by a fifth of it, which no guide draws away. */
    void step(int dx, int dy, Step step) {
        View view = canvas.view();
        double m =
                switch (step) {
                    case LONG -> LONG * Resting.gridM(view);
                    case GRID -> Resting.gridM(view);
                    case FINE -> Resting.fineM(view);
                };
        isFree = step == Step.FINE;
        Point2D from = from();
        go(from.getX() + dx * m, from.getY() + dy * m);
    }

    /** How far one press leads. */
    enum Step {
        LONG,
        GRID,
        FINE
    }

    /** To whatever comes next that way: an edge of a rack, a corner of a pipe, a wall. */
    void jump(int dx, int dy) {
        isFree = false;
        Point2D from = from();
        go(
                dx == 0 ? from.getX() : canvas.nextStop(from.getX(), true, dx),
                dy == 0 ? from.getY() : canvas.nextStop(from.getY(), false, dy));
    }

    /** Where it is, m. */
    Point2D place() {
        return from();
    }

    /** Where it is; the first time in the middle of what is seen. */
    private Point2D from() {
        Point2D now = at;
        return now != null
                ? now
                : canvas.viewport().m(new Point2D.Double(canvas.getWidth() / 2.0, canvas.getHeight() / 2.0));
    }

    /** There, whatever drew it. */
    void go(double xM, double yM) {
        at = new Point2D.Double(xM, yM);
        if (isDown) {
            canvas.tool().dragged(spot());
        } else {
            canvas.tool().moved(spot());
        }
        canvas.say(words());
        canvas.repaint();
    }

    private Spot spot() {
        Point2D here = from();
        return new Spot(here.getX(), here.getY(), canvas.reachM(), false, isFree, false, 1);
    }

    /** Presses there, or lets go. */
    void set() {
        Tool tool = canvas.tool();
        if (isDown || !tool.drags()) {
            if (!isDown) {
                tool.pressed(spot(), canvas.hit(canvas.viewport().px(spot().xM(), spot().yM())));
            }
            tool.released(spot());
            isDown = false;
            tool.next().ifPresent(next -> go(next.getX(), next.getY()));
        } else {
            tool.pressed(spot(), Optional.empty());
            isDown = true;
        }
        canvas.repaint();
    }

    /** The mouse, or another tool, has taken the hand. */
    void letGo() {
        at = null;
        isDown = false;
    }

    private String words() {
        return canvas.words(from());
    }

    /** What the tool paints, with the cross over it. */
    Sketch over(Sketch sketch) {
        if (at == null) {
            return sketch;
        }
        Spot here = spot();
        List<Sketch.Stroke> strokes = Stream.concat(
                        sketch.strokes().stream(), Stream.of(new Sketch.Cross(here.xM(), here.yM())))
                .toList();
        return new Sketch(
                strokes, sketch.note().or(() -> Optional.of(new Sketch.Note(here.xM(), here.yM(), words(), false))));
    }
}
