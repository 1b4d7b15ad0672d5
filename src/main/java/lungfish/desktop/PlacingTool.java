package lungfish.desktop;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.quantity.Dimension;

/** A tool that puts something down: shown where it would rest while the pointer moves, tried while the button is down. */
abstract class PlacingTool extends PointingTool {
    PlacingTool(View view, String name, char key, String hint) {
        super(view, name, key, hint);
    }

    /**
     * What a place would come to.
     *
     * @param strokes what is painted there
     * @param says what is told beside the hand
     */
    record Placing(Attempt attempt, List<Sketch.Stroke> strokes, List<String> says) {}

    /** What putting it there would do; empty where it can go nowhere. */
    abstract Optional<Placing> placing(Spot spot);

    /** What Enter does: puts it where it suits what is chosen. */
    abstract Attempt placed();

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        super.pressed(spot, under);
        placing(spot).ifPresent(placing -> gesture().tryOut(placing.attempt()));
    }

    @Override
    void dragged(Spot spot) {
        pressed(spot, Optional.empty());
    }

    @Override
    void released(Spot spot) {
        forget(); // what was put down is seen there
        super.released(spot);
    }

    @Override
    Dimension typed() {
        return Dimension.DEPTH;
    }

    @Override
    Optional<Point2D> next() {
        return at().map(spot -> new Point2D.Double(spot.xM(), spot.yM()));
    }

    @Override
    void finished() {
        view().attempt((room, chosen) -> placed());
    }

    @Override
    boolean cancelled() {
        forget();
        return super.cancelled();
    }

    @Override
    Sketch sketch(Spot spot) {
        return placing(spot)
                .map(placing -> new Sketch(placing.strokes(), note(spot, placing)))
                .orElse(Sketch.NOTHING);
    }

    private Optional<Sketch.Note> note(Spot spot, Placing placing) {
        return gesture().isGoingOn()
                ? gesture().note(spot, placing.says())
                : placing.attempt()
                        .refused()
                        .map(refused ->
                                new Sketch.Note(spot.xM(), spot.yM(), refused.sentence(view().quantities()), true))
                        .or(() -> Optional.of(
                                new Sketch.Note(spot.xM(), spot.yM(), String.join(" · ", placing.says()), false)));
    }
}
