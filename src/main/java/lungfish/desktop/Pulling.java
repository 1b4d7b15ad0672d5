package lungfish.desktop;

import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Selection;
import lungfish.edit.Snap;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;

/** A pull at a grip: where it comes to rest, what comes of it, and what is painted meanwhile. */
record Pulling(View view, Grip grip) {
    private SnappedPoint rest(Spot at) {
        Snap snap = Resting.snap(view, Selection.of(grip.moves()), at);
        Point there = new Point(at.xM(), at.yM(), 0);
        return grip.run()
                .map(run -> Resting.clipped(view, snap, run.size()).corner(grip.neighbours(), there))
                .orElseGet(() -> snap.ground(grip.neighbours(), there));
    }

    Attempt attempt(Spot at) {
        return grip.pulled(view.desk().room(), rest(at));
    }

    Stream<Sketch.Stroke> strokes(Spot at) {
        SnappedPoint rest = rest(at);
        Point there = rest.place();
        Stream<Sketch.Stroke> lengths =
                grip.neighbours().stream().map(next -> new Sketch.Length(next.xM(), next.yM(), there.xM(), there.yM()));
        return Stream.concat(lengths, Resting.guides(rest.guides()));
    }
}
