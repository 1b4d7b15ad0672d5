package lungfish.desktop;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.DepthSnap;
import lungfish.edit.HeightSnap;
import lungfish.edit.ShelfSnap;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** How shelves, tanks and devices come to rest on the front of a rack, and how that is painted. */
final class FrontResting {
    private static final double METRIC_DEPTH_M = 0.01;
    private static final double US_DEPTH_M = 0.5 * 0.0254;
    private static final double OVER_M = 0.05;

    private FrontResting() {}

    /** Of one step of a device up or down, m: 1 cm, or half an inch. */
    static double depthGridM(View view) {
        return switch (view.desk().units()) {
            case METRIC -> METRIC_DEPTH_M;
            case US -> US_DEPTH_M;
        };
    }

    static HeightSnap height(View view, Rack rack, Optional<ShelfId> moving, double heightM, Spot spot) {
        return HeightSnap.at(view.desk().room(), rack, moving, heightM, reachM(spot), grid(spot, Resting.gridM(view)));
    }

    /** A free hand is drawn to nothing. */
    private static double reachM(Spot spot) {
        return spot.isFree() ? 0 : spot.reachM();
    }

    private static OptionalDouble grid(Spot spot, double gridM) {
        return spot.isFree() ? OptionalDouble.empty() : OptionalDouble.of(gridM);
    }

    static ShelfSnap along(
            View view, Rack rack, Shelf shelf, Set<TankId> moving, double lengthM, double xM, Spot spot) {
        return ShelfSnap.at(rack, shelf, moving, lengthM, xM, reachM(spot), grid(spot, depthGridM(view)));
    }

    static DepthSnap depth(View view, Tank tank, Map<String, Double> others, double depthM, Spot spot) {
        return DepthSnap.at(tank, others, depthM, reachM(spot), grid(spot, depthGridM(view)));
    }

    /** "45 cm above the floor". */
    static String above(View view, double heightM) {
        return view.quantities().show(heightM, Dimension.DEPTH) + " above the floor";
    }

    /** "30 cm deep". */
    static String deep(View view, double depthM) {
        return view.quantities().show(depthM, Dimension.DEPTH) + " deep";
    }

    /** The board at its new height, how high it is, what room it leaves above the tanks below it, and why it rests there. */
    static List<Sketch.Stroke> shelf(Rack rack, Optional<ShelfId> moving, HeightSnap rest) {
        double y = -rest.heightM();
        double middle = rack.widthM() / 2;
        List<Sketch.Stroke> strokes = new ArrayList<>();
        strokes.add(new Sketch.Ghost(new Rectangle2D.Double(0, y, rack.widthM(), 0.03)));
        double quarter = rack.widthM() / 4;
        strokes.add(new Sketch.Length(quarter, 0, quarter, y));
        next(rack, moving, rest.heightM(), -1)
                .ifPresent(below -> strokes.add(new Sketch.Length(middle, -topM(below), middle, y)));
        next(rack, moving, rest.heightM(), 1)
                .ifPresent(above -> strokes.add(new Sketch.Length(middle, y, middle, -above.heightM())));
        rest.why()
                .ifPresent(stop -> strokes.add(
                        new Sketch.Rest(-OVER_M, -stop.lineM(), rack.widthM() + OVER_M, -stop.lineM(), stop.words())));
        return strokes;
    }

    /** The next shelf above or below a height. */
    private static Optional<Shelf> next(Rack rack, Optional<ShelfId> but, double heightM, int way) {
        return rack.shelves().stream()
                .filter(shelf -> !but.equals(Optional.of(shelf.id())) && way * (shelf.heightM() - heightM) > 0)
                .min(Comparator.comparingDouble(shelf -> Math.abs(shelf.heightM() - heightM)));
    }

    /** Of what stands on a shelf, above the floor. */
    static double topM(Shelf shelf) {
        return shelf.heightM()
                + shelf.tanks().stream()
                        .mapToDouble(tank -> tank.outside().heightM())
                        .max()
                        .orElse(0);
    }

    /** A tank where it would stand: how far it is to its neighbours or the ends of the rack, and why it rests there. */
    static Stream<Sketch.Stroke> tank(Rack rack, Shelf shelf, Set<TankId> moving, Tank.Size size, ShelfSnap rest) {
        double bottom = -shelf.heightM();
        double endM = rest.xM() + size.lengthM();
        double middle = bottom - size.heightM() / 2;
        List<Tank> others = shelf.tanks().stream()
                .filter(tank -> !moving.contains(tank.id()))
                .toList();
        double leftM = others.stream()
                .mapToDouble(Tank::endXM)
                .filter(x -> x <= rest.xM() + 1e-6)
                .max()
                .orElse(0);
        double rightM = others.stream()
                .mapToDouble(Tank::xM)
                .filter(x -> x >= endM - 1e-6)
                .min()
                .orElse(rack.widthM());
        Stream<Sketch.Stroke> ghost = Stream.of(
                new Sketch.Ghost(
                        new Rectangle2D.Double(rest.xM(), bottom - size.heightM(), size.lengthM(), size.heightM())),
                new Sketch.Length(leftM, middle, rest.xM(), middle),
                new Sketch.Length(endM, middle, rightM, middle));
        Stream<Sketch.Stroke> why = rest.why().stream()
                .map(stop -> new Sketch.Rest(
                        stop.lineM(), bottom - size.heightM() - OVER_M, stop.lineM(), bottom, stop.words()));
        return Stream.concat(ghost, why);
    }

    /** What a tank leaves free below the next shelf, m; negative where it is too high; empty under the sky. */
    static Optional<Double> headroomM(Rack rack, Shelf shelf, Tank.Size size) {
        return next(rack, Optional.empty(), shelf.heightM(), 1)
                .map(above -> above.heightM() - shelf.heightM() - size.heightM());
    }

    /** How much that is, above the middle of the tank. */
    static Stream<Sketch.Stroke> headroom(Rack rack, Shelf shelf, Tank.Size size, double xM) {
        double top = -(shelf.heightM() + size.heightM());
        double middle = xM + size.lengthM() / 2;
        return headroomM(rack, shelf, size)
                .filter(free -> free > 0)
                .map(free -> (Sketch.Stroke) new Sketch.Length(middle, top, middle, top - free))
                .stream();
    }

    /** A device where it would hang: how deep it is, and why it rests there. */
    static List<Sketch.Stroke> device(Front.Standing in, double xM, DepthSnap rest) {
        double line = -(in.shelf().heightM() + in.tank().waterDepthM());
        List<Sketch.Stroke> strokes = new ArrayList<>();
        strokes.add(new Sketch.Length(xM, line, xM, line + rest.depthM()));
        strokes.add(new Sketch.Spot(xM, line + rest.depthM()));
        rest.why()
                .ifPresent(stop -> strokes.add(new Sketch.Rest(
                        in.tank().xM(), line + stop.lineM(), in.tank().endXM(), line + stop.lineM(), stop.words())));
        return strokes;
    }
}
