package lungfish.desktop;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.RoomEdits;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import org.jspecify.annotations.Nullable;

/** Draws inner walls; a click at an outer wall puts a door there. */
final class WallTool extends Tool {
    private static final double DOOR_M = 0.8;

    private final View view;
    private final Gesture gesture;
    private @Nullable Point from;
    private Spot at = Spot.NOWHERE;

    WallTool(View view) {
        super("Wall", 'W', "Drag an inner wall · a click at an outer wall puts a door there");
        this.view = view;
        this.gesture = new Gesture(view);
    }

    private SnappedPoint rest(List<Point> drawn, Spot spot) {
        Spot inside = Resting.within(view.desk().room(), spot);
        return Resting.snap(view, Selection.NONE, inside).ground(drawn, new Point(inside.xM(), inside.yM(), 0));
    }

    @Override
    boolean drags() {
        return true;
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = spot;
        from = rest(List.of(), spot).place();
    }

    @Override
    void dragged(Spot spot) {
        at = spot;
        Point start = from;
        if (start != null) {
            Point end = rest(List.of(start), spot).place();
            gesture.tryOut(RoomEdits.addWall(view.desk().room(), start.xM(), start.yM(), end.xM(), end.yM()));
        }
    }

    @Override
    void released(Spot spot) {
        Point start = from;
        if (start != null && spot.isNear(start.xM(), start.yM())) {
            gesture.tryOut(RoomEdits.addDoor(view.desk().room(), spot.xM(), spot.yM(), DOOR_M));
        }
        if (gesture.isGoingOn()) {
            gesture.keep();
        }
        from = null;
    }

    @Override
    Optional<Point2D> next() {
        return Optional.ofNullable(from).map(start -> new Point2D.Double(start.xM(), start.yM()));
    }

    @Override
    boolean takesLength() {
        return from != null;
    }

    /** So long, the way that the hand shows. */
    @Override
    void length(double lengthM) {
        Point start = from;
        if (start == null) {
            return;
        }
        Point end = rest(List.of(start), at).place();
        double far = Math.max(1e-9, Math.hypot(end.xM() - start.xM(), end.yM() - start.yM()));
        Point to = start.towards(end, lengthM / far);
        gesture.tryOut(RoomEdits.addWall(view.desk().room(), start.xM(), start.yM(), to.xM(), to.yM()));
        gesture.keep();
        from = null;
    }

    @Override
    boolean cancelled() {
        boolean was = from != null;
        from = null;
        gesture.leave();
        return was;
    }

    @Override
    Sketch sketch() {
        Point start = from;
        if (start == null) {
            return Sketch.NOTHING;
        }
        SnappedPoint end = rest(List.of(start), at);
        Stream<Sketch.Stroke> wall = Stream.of(
                new Sketch.Path(List.of(
                        new Point2D.Double(start.xM(), start.yM()),
                        new Point2D.Double(end.place().xM(), end.place().yM()))),
                new Sketch.Length(
                        start.xM(), start.yM(), end.place().xM(), end.place().yM()));
        return new Sketch(Stream.concat(wall, Resting.guides(end.guides())).toList(), gesture.note(at));
    }
}
