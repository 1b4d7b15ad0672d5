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
import lungfish.edit.Snap;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;

/** Draws pipe, corner by corner: meeting the start closes a loop, meeting another pipe makes a branch. */
final class PipeTool extends Tool {
    private final View view;
    private final Gesture gesture;
    private final PipeOptions options;
    private final List<Point> corners = new ArrayList<>();
    private Spot at = Spot.NOWHERE;

    PipeTool(View view, PipeOptions options) {
        super(
                "Pipe",
                'P',
                "Click the corners · meet the start to close a loop · Enter or a double click ends the pipe");
        this.view = view;
        this.gesture = new Gesture(view);
        this.options = options;
    }

    private SnappedPoint rest(Spot spot) {
        Point there = new Point(spot.xM(), spot.yM(), options.heightM());
        Snap snap = Resting.snap(view, Selection.NONE, spot);
        return snap.clipped(options.chosenSize()).next(corners, there);
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = spot;
        if (spot.clicks() > 1) {
            finished();
            return;
        }
        SnappedPoint next = rest(spot);
        corners.add(next.place());
        if (next.closes() || (next.onto().isPresent() && corners.size() > 1)) {
            finished();
        } else {
            tryOut(corners);
        }
    }

    @Override
    void moved(Spot spot) {
        at = spot;
        if (!corners.isEmpty()) {
            tryOut(drawn());
        }
    }

    @Override
    void dragged(Spot spot) {
        moved(spot);
    }

    private void tryOut(List<Point> through) {
        if (through.size() > 1
                && (isAttached(through) || view.desk().room().runs().isEmpty())) {
            gesture.tryOut(PipeDrawing.draw(view.desk().room(), options.chosenSize(), through));
        }
    }

    /** A pipe that hangs on nothing yet would only take outlets from the one that feeds them: it is not tried before it is done. */
    private boolean isAttached(List<Point> through) {
        return Stream.of(through.get(0), through.get(through.size() - 1))
                .anyMatch(end -> PipeDrawing.touchesAPipe(view.desk().room(), end));
    }

    private List<Point> drawn() {
        List<Point> drawn = new ArrayList<>(corners);
        drawn.add(rest(at).place());
        return drawn;
    }

    @Override
    void finished() {
        if (corners.size() > 1) {
            gesture.tryOut(PipeDrawing.draw(view.desk().room(), options.chosenSize(), corners));
            gesture.keep();
        } else {
            gesture.leave();
        }
        corners.clear();
    }

    @Override
    boolean cancelled() {
        boolean was = !corners.isEmpty();
        corners.clear();
        gesture.leave();
        return was;
    }

    @Override
    Sketch sketch() {
        if (corners.isEmpty()) {
            return Sketch.NOTHING;
        }
        List<Point> drawn = drawn();
        Point before = drawn.get(drawn.size() - 2);
        Point last = drawn.get(drawn.size() - 1);
        Stream<Sketch.Stroke> strokes = Stream.of(
                new Sketch.Path(drawn.stream()
                        .<Point2D>map(point -> new Point2D.Double(point.xM(), point.yM()))
                        .toList()),
                new Sketch.Length(before.xM(), before.yM(), last.xM(), last.yM()));
        return new Sketch(
                Stream.concat(strokes, Resting.guides(rest(at).guides())).toList(), gesture.note(at));
    }
}
