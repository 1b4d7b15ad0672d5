package lungfish.desktop;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Box;
import lungfish.edit.Clearance;
import lungfish.edit.Guide;
import lungfish.edit.Selection;
import lungfish.edit.Snap;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** How what is drawn comes to rest at walls, racks, pipes and grid, and how that is painted. */
final class Resting {
    private static final double METRIC_GRID_M = 0.05;
    private static final double US_GRID_M = 2 * 0.0254;
    private static final double FINE = 0.2;

    private Resting() {}

    /** Of the grid and of one key press, m: 5 cm, or 2 in. */
    static double gridM(View view) {
        return switch (view.desk().units()) {
            case METRIC -> METRIC_GRID_M;
            case US -> US_GRID_M;
        };
    }

    /** Of one key press with Shift, m. */
    static double fineM(View view) {
        return gridM(view) * FINE;
    }

    /** As the room was before the gesture; a free hand is drawn to nothing. */
    static Snap snap(View view, Selection moving, Spot spot) {
        return spot.isFree()
                ? new Snap(view.desk().room(), moving, OptionalDouble.empty(), 0)
                : new Snap(view.desk().room(), moving, OptionalDouble.of(gridM(view)), spot.reachM());
    }

    /** The same for pipe of a size, which hangs in clips off the walls. */
    static Snap clipped(View view, Snap snap, String size) {
        return view.desk().shared().catalogue().pipe(size).map(snap::clipped).orElse(snap);
    }

    /** Within the outer walls: what is drawn beyond them ends at them. */
    static Spot within(Room room, Spot spot) {
        return spot.at(
                Math.max(0, Math.min(spot.xM(), room.shell().lengthM())),
                Math.max(0, Math.min(spot.yM(), room.shell().widthM())));
    }

    /** The grid needs no line: everything lies on it. */
    static Stream<Sketch.Stroke> guides(List<Guide> guides) {
        return guides.stream()
                .filter(guide -> guide.reason() != Guide.Reason.GRID)
                .map(guide ->
                        new Sketch.Rest(guide.fromXM(), guide.fromYM(), guide.toXM(), guide.toYM(), guide.words()));
    }

    /** How far it is to whatever is next, on each side. */
    static Stream<Sketch.Stroke> clearances(View view, Box box, Selection moving) {
        return Clearance.around(view.desk().room(), box, moving).stream()
                .map(gap -> new Sketch.Length(gap.fromXM(), gap.fromYM(), gap.toXM(), gap.toYM()));
    }

    /** How wide and how deep it is, along its upper and left edges, outside. */
    static Stream<Sketch.Stroke> sides(Box box, double offM) {
        return Stream.of(
                new Sketch.Length(box.fromXM(), box.fromYM() - offM, box.toXM(), box.fromYM() - offM),
                new Sketch.Length(box.fromXM() - offM, box.fromYM(), box.fromXM() - offM, box.toYM()));
    }

    /** How far a place on a run is from the corners on both sides of it, seen from above. */
    static Stream<Sketch.Stroke> alongLeg(Run run, double atM) {
        List<Point> corners = run.corners();
        Point at = run.at(atM);
        double before = 0;
        for (int i = 1; i < corners.size(); i++) {
            double leg = corners.get(i - 1).distanceM(corners.get(i));
            if (atM <= before + leg || i == corners.size() - 1) {
                return Stream.of(length(corners.get(i - 1), at), length(at, corners.get(i)));
            }
            before += leg;
        }
        return Stream.empty();
    }

    private static Sketch.Stroke length(Point from, Point to) {
        return new Sketch.Length(from.xM(), from.yM(), to.xM(), to.yM());
    }
}
