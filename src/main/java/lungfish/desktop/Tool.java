package lungfish.desktop;

import java.awt.Cursor;
import java.awt.geom.Point2D;
import java.util.Optional;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.quantity.Dimension;

/** What the pointer does on the room: choose, draw, place, measure. One is in the hand at a time. */
abstract class Tool {
    private final String name;
    private final char key;
    private final String hint;

    Tool(String name, char key, String hint) {
        this.name = name;
        this.key = key;
        this.hint = hint;
    }

    final String name() {
        return name;
    }

    /** The letter that takes it into the hand. */
    final char key() {
        return key;
    }

    /** What to do with it, in one line. */
    String hint() {
        return hint;
    }

    Cursor cursor(Optional<Hit> under) {
        return Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR);
    }

    /** Whether a double click goes into what is under it. */
    boolean enters() {
        return false;
    }

    void pressed(Spot spot, Optional<Hit> under) {}

    /** Moved with the button down. */
    void dragged(Spot spot) {}

    void released(Spot spot) {}

    /** Moved with no button down. */
    void moved(Spot spot) {}

    /** Whether it draws from where the button goes down to where it comes up; else each press is one point. */
    boolean drags() {
        return false;
    }

    /** Where what is drawn goes on from, after a press: the aim follows. */
    Optional<Point2D> next() {
        return Optional.empty();
    }

    /** Whether a length can be typed now for what is being drawn. */
    boolean takesLength() {
        return false;
    }

    /** What a number is that is typed without a unit. */
    Dimension typed() {
        return Dimension.LENGTH;
    }

    /** That length, m, the way that is shown. */
    void length(double lengthM) {}

    /** Takes back the last point of what is being drawn. */
    void back() {}

    /** Page up or down: higher or lower by so many steps. */
    void raise(int steps) {}

    /** The pointer has gone from the drawing: what it would have put down is not shown any longer. */
    void left() {}

    /** Enter: what has been drawn so far is what is meant. */
    void finished() {}

    /** Escape: puts down what is going on, and says whether anything was. */
    boolean cancelled() {
        return false;
    }

    /** What is painted over the room while something is going on. */
    Sketch sketch() {
        return Sketch.NOTHING;
    }
}
