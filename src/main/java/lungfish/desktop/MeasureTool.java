package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import org.jspecify.annotations.Nullable;

/** Measures from one place to another. The last length stays until the next one, or Escape. */
final class MeasureTool extends Tool {
    private final View view;
    private @Nullable Point from;
    private @Nullable Point to;
    private List<Sketch.Stroke> guides = List.of();

    MeasureTool(View view) {
        super("Measure", 'M', "Drag from one place to another");
        this.view = view;
    }

    private Point rest(Spot spot) {
        SnappedPoint rest = Resting.snap(view, Selection.NONE, spot).point(new Point(spot.xM(), spot.yM(), 0));
        guides = Resting.guides(rest.guides()).toList();
        return rest.place();
    }

    @Override
    boolean drags() {
        return true;
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        from = rest(spot);
        to = from;
    }

    @Override
    void dragged(Spot spot) {
        to = rest(spot);
    }

    @Override
    void released(Spot spot) {
        guides = List.of();
    }

    @Override
    boolean cancelled() {
        boolean was = from != null;
        from = null;
        to = null;
        return was;
    }

    @Override
    Sketch sketch() {
        Point one = from;
        Point other = to;
        if (one == null || other == null) {
            return Sketch.NOTHING;
        }
        Stream<Sketch.Stroke> length = Stream.of(
                new Sketch.Length(one.xM(), one.yM(), other.xM(), other.yM()),
                new Sketch.Handle(one.xM(), one.yM()),
                new Sketch.Handle(other.xM(), other.yM()));
        return new Sketch(Stream.concat(length, guides.stream()).toList(), Optional.empty());
    }
}
