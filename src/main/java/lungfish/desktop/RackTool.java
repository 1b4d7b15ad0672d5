package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Box;
import lungfish.edit.RackDrawing;
import lungfish.edit.RackTemplate;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import lungfish.room.Rack;
import org.jspecify.annotations.Nullable;

/** Draws racks: a drag fills a rectangle with tanks, a click puts down the template as it is. */
final class RackTool extends Tool {
    private static final double OFF_PX_AS_REACH = 2;

    private final View view;
    private final Gesture gesture;
    private final RackOptions options;
    private @Nullable SnappedPoint from;
    private @Nullable SnappedPoint to;
    private Spot at = Spot.NOWHERE;

    RackTool(View view, RackOptions options) {
        super("Rack", 'R', "Drag a rectangle, its back to a wall · a click puts down one of that size");
        this.view = view;
        this.gesture = new Gesture(view);
        this.options = options;
    }

    private SnappedPoint rest(Spot spot) {
        Spot inside = Resting.within(view.desk().room(), spot);
        return Resting.snap(view, Selection.NONE, inside).ground(new Point(inside.xM(), inside.yM(), 0));
    }

    @Override
    boolean drags() {
        return true;
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = spot;
        from = rest(spot);
        to = from;
    }

    @Override
    void dragged(Spot spot) {
        at = spot;
        to = rest(spot);
        gesture.tryOut(attempt());
    }

    private Attempt attempt() {
        RackTemplate template = options.template();
        return box().filter(drawn -> drawn.spanXM() > at.reachM() && drawn.spanYM() > at.reachM())
                .map(drawn -> RackDrawing.draw(view.desk().room(), template, drawn, options.sizes()))
                .orElseGet(() -> RackDrawing.addWithin(view.desk().room(), template, at.xM(), at.yM(), Rack.Turn.NONE));
    }

    private Optional<Box> box() {
        SnappedPoint one = from;
        SnappedPoint other = to;
        return one == null || other == null
                ? Optional.empty()
                : Optional.of(Box.between(
                        one.place().xM(),
                        one.place().yM(),
                        other.place().xM(),
                        other.place().yM()));
    }

    @Override
    void released(Spot spot) {
        if (from != null) {
            gesture.tryOut(attempt());
            gesture.keep();
        }
        from = null;
        to = null;
    }

    @Override
    boolean cancelled() {
        boolean was = from != null;
        from = null;
        to = null;
        gesture.leave();
        return was;
    }

    @Override
    Sketch sketch() {
        Stream<Sketch.Stroke> ghost = box().stream()
                .flatMap(drawn -> Stream.concat(
                        Stream.of(new Sketch.Ghost(Boxes.shape(drawn))),
                        Resting.sides(drawn, OFF_PX_AS_REACH * at.reachM())));
        Stream<Sketch.Stroke> guides = Resting.guides(to == null ? List.of() : to.guides());
        return new Sketch(Stream.concat(ghost, guides).toList(), gesture.note(at));
    }
}
