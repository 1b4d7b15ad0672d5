package lungfish.desktop;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.PipeDrawing;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.quantity.Dimension;
import lungfish.room.Point;

/**
 * Draws pipe, corner by corner: meeting the start closes a loop, meeting another pipe makes a branch. Where the height is
 * changed on the way, the pipe goes straight up or down there.
 */
final class PipeTool extends Tool {
    /** Of the height, by one press of a key. */
    private static final int RAISE = 2;

    private static final double SAME_M = 0.001;

    /** Of a way's length: less aside than this is straight on. */
    private static final double ALONG = 0.2;

    private final View view;
    private final Gesture gesture;
    private final PipeOptions options;
    private final List<Point> corners = new ArrayList<>();
    private Spot at = Spot.NOWHERE;

    PipeTool(View view, PipeOptions options) {
        super(
                "Pipe",
                'P',
                "Click corners or type a length, Shift: straight · the start closes a loop · Page up, down: height · Enter ends it");
        this.view = view;
        this.gesture = new Gesture(view);
        this.options = options;
    }

    private SnappedPoint rest(Spot spot) {
        Point there = straight(new Point(spot.xM(), spot.yM(), options.heightM()), spot);
        return Resting.snap(view, Selection.NONE, spot)
                .clipped(options.chosenSize())
                .next(corners, there);
    }

    /** With Shift a leg goes straight along the room, whichever way is nearer. */
    private Point straight(Point there, Spot spot) {
        if (corners.isEmpty() || !spot.adds()) {
            return there;
        }
        Point last = corners.get(corners.size() - 1);
        boolean isAcross = Math.abs(there.xM() - last.xM()) >= Math.abs(there.yM() - last.yM());
        return new Point(isAcross ? there.xM() : last.xM(), isAcross ? last.yM() : there.yM(), there.zM());
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = spot;
        SnappedPoint next = rest(spot);
        if (spot.clicks() > 1 || isWhereItWas(next.place())) {
            finished();
            return;
        }
        boolean begins = corners.isEmpty();
        if (begins && next.onto().isPresent()) {
            options.beginAt(next.place().zM());
        }
        setCorners(through(next));
        if (next.closes() || (next.onto().isPresent() && !begins)) {
            finished();
        } else {
            tryOut(corners);
        }
    }

    private void setCorners(List<Point> those) {
        corners.clear();
        corners.addAll(those);
    }

    private boolean isWhereItWas(Point next) {
        return !corners.isEmpty() && isSamePlace(corners.get(corners.size() - 1), next);
    }

    private static boolean isSamePlace(Point one, Point other) {
        return Math.hypot(one.xM() - other.xM(), one.yM() - other.yM()) < SAME_M;
    }

    /** What is drawn so far, and on to there: up or down before, where the height has changed, and after, to meet a pipe. */
    private List<Point> through(SnappedPoint next) {
        List<Point> drawn = risen();
        Point place = next.place();
        boolean meets = next.closes() || next.onto().isPresent();
        Point level = new Point(place.xM(), place.yM(), drawn.isEmpty() && meets ? place.zM() : options.heightM());
        drawn.add(level);
        if (meets && Math.abs(level.zM() - place.zM()) > SAME_M) {
            drawn.add(place);
        }
        return drawn;
    }

    /** What is drawn so far, at the height that is set now. */
    private List<Point> risen() {
        List<Point> drawn = new ArrayList<>(corners);
        if (!drawn.isEmpty()) {
            Point last = drawn.get(drawn.size() - 1);
            if (Math.abs(last.zM() - options.heightM()) > SAME_M) {
                drawn.add(new Point(last.xM(), last.yM(), options.heightM()));
            }
        }
        return drawn;
    }

    @Override
    void moved(Spot spot) {
        at = spot;
        if (!corners.isEmpty()) {
            tryOut(through(rest(spot)));
        }
    }

    @Override
    void dragged(Spot spot) {
        moved(spot);
    }

    private void tryOut(List<Point> points) {
        if (points.size() > 1
                && (isAttached(points) || view.desk().room().runs().isEmpty())) {
            gesture.tryOut(PipeDrawing.draw(view.desk().room(), options.chosenSize(), points));
        }
    }

    /** A pipe that hangs on nothing yet would only take outlets from the one that feeds them: it is not tried before it is done. */
    private boolean isAttached(List<Point> points) {
        return Stream.of(points.get(0), points.get(points.size() - 1))
                .anyMatch(end -> PipeDrawing.touchesAPipe(view.desk().room(), end));
    }

    @Override
    void raise(int steps) {
        options.raise(steps * RAISE * Resting.gridM(view));
        if (!corners.isEmpty()) {
            tryOut(through(rest(at)));
        }
    }

    @Override
    void back() {
        if (corners.size() > 1) {
            corners.remove(corners.size() - 1);
            tryOut(through(rest(at)));
        } else {
            cancelled();
        }
    }

    @Override
    boolean takesLength() {
        return !corners.isEmpty();
    }

    /** So long, the way that the hand shows; a way that is nearly straight along the room is meant so. */
    @Override
    void length(double lengthM) {
        Point last = corners.get(corners.size() - 1);
        Point to = rest(at).place();
        double dx = to.xM() - last.xM();
        double dy = to.yM() - last.yM();
        double far = Math.hypot(dx, dy);
        if (far < SAME_M || !(lengthM > 0)) {
            return;
        }
        boolean isAcross = Math.abs(dy) < ALONG * far;
        boolean isDown = Math.abs(dx) < ALONG * far;
        double x = isDown ? 0 : isAcross ? Math.signum(dx) : dx / far;
        double y = isAcross ? 0 : isDown ? Math.signum(dy) : dy / far;
        Spot end = at.at(last.xM() + x * lengthM, last.yM() + y * lengthM);
        pressed(new Spot(end.xM(), end.yM(), SAME_M, false, true, false, 1), Optional.empty());
        at = end;
    }

    @Override
    Optional<Point2D> next() {
        return corners.isEmpty()
                ? Optional.empty()
                : Optional.of(new Point2D.Double(
                        corners.get(corners.size() - 1).xM(),
                        corners.get(corners.size() - 1).yM()));
    }

    @Override
    void finished() {
        List<Point> drawn = risen();
        if (drawn.size() > 1) {
            gesture.tryOut(PipeDrawing.draw(view.desk().room(), options.chosenSize(), drawn));
            gesture.keep();
        } else {
            gesture.leave();
        }
        putDown();
    }

    private void putDown() {
        corners.clear();
        options.end();
    }

    @Override
    boolean cancelled() {
        boolean was = !corners.isEmpty();
        putDown();
        gesture.leave();
        return was;
    }

    @Override
    Sketch sketch() {
        if (corners.isEmpty()) {
            return Sketch.NOTHING;
        }
        SnappedPoint rest = rest(at);
        List<Point> drawn = through(rest);
        Point before = corners.get(corners.size() - 1);
        Stream<Sketch.Stroke> strokes = Stream.of(
                new Sketch.Path(drawn.stream()
                        .<Point2D>map(point -> new Point2D.Double(point.xM(), point.yM()))
                        .toList()),
                new Sketch.Length(
                        before.xM(),
                        before.yM(),
                        rest.place().xM(),
                        rest.place().yM()));
        return new Sketch(
                Stream.concat(strokes, Resting.guides(rest.guides())).toList(),
                gesture.note(at, List.of(height(before)))
                        .or(() -> Optional.of(new Sketch.Note(at.xM(), at.yM(), height(before), false))));
    }

    /** "up 0.40 m to 2.45 m high", or how high it goes on. */
    private String height(Point before) {
        double rise = options.heightM() - before.zM();
        String high = length(options.heightM(), "") + " high";
        return Math.abs(rise) < SAME_M ? high : length(Math.abs(rise), rise > 0 ? "up " : "down ") + " to " + high;
    }

    private String length(double m, String before) {
        return before + view.quantities().show(m, Dimension.LENGTH);
    }
}
