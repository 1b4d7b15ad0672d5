package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.siphon.Way;

/** Paints a way of water over the room from above, and over the front of a rack where it passes there. */
public final class WaterPainter {
    /** A pipe that lies so near a rack belongs to its front. */
    private static final double BESIDE_M = 0.15;

    private static final double BEFORE_M = 0.6;
    private static final double SAME_HEIGHT_M = 1e-3;

    private final WaterLaid water;
    private final WaterLine line;
    private final Viewport view;

    private WaterPainter(WaterLaid water, WaterLine line, Viewport view) {
        this.water = water;
        this.line = line;
        this.view = view;
    }

    /** Over the room from above. */
    static void paint(WaterLaid water, Ink ink) {
        new WaterPainter(water, WaterLine.fromAbove(ink), ink.view()).fromAbove();
    }

    /** Over the front of a rack. */
    public static void paint(WaterLaid water, RackScene scene, Viewport view, Look look, Graphics2D g) {
        new WaterPainter(water, WaterLine.onFront(new Ink(look, view, g)), view).onFront(scene);
    }

    /** What the line says, for the legend: "the way of water when the air stops: 45 L, once lifted 70 cm". */
    static String saying(WaterLaid water, Quantities quantities) {
        String start = water.way().start() == Way.Start.BY_ITSELF
                ? "by itself"
                : "once lifted " + quantities.show(water.way().liftM(), Dimension.DEPTH);
        return "the way of water when the air stops: "
                + quantities.show(water.way().waterM3(), Dimension.VOLUME) + ", " + start;
    }

    private void fromAbove() {
        List<Point> points = water.path().points();
        line.course(points.stream().map(this::above).toList());
        line.tag("water line", water.way().from().lineM(), above(points.get(0)));
        line.tag(endWord(), water.way().into().lineM(), above(points.get(points.size() - 1)));
        line.tag("highest", water.path().crest().zM(), above(middleOfCrest()));
    }

    private String endWord() {
        return water.way().reachesMachine() ? "machine" : "water line";
    }

    private Point2D above(Point point) {
        return view.px(point.xM(), point.yM());
    }

    /** Half the way along what is highest, so that its tag stands clear of the ends. */
    private Point middleOfCrest() {
        double top = water.path().crest().zM();
        List<Point> high = water.path().points().stream()
                .skip(2) // behind the rim of its own tank
                .filter(point -> Math.abs(point.zM() - top) < SAME_HEIGHT_M)
                .toList();
        double half = lengthM(high) / 2;
        for (int i = 1; i < high.size(); i++) {
            double leg = high.get(i - 1).distanceM(high.get(i));
            if (half <= leg && leg > 0) {
                return high.get(i - 1).towards(high.get(i), half / leg);
            }
            half -= leg;
        }
        return water.path().crest();
    }

    private static double lengthM(List<Point> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distanceM(points.get(i));
        }
        return sum;
    }

    private void onFront(RackScene scene) {
        double topM = scene.boundsM().getY();
        List<Point2D> piece = new ArrayList<>();
        for (Point point : water.path().points()) {
            if (isAt(scene.rack(), point)) {
                piece.add(onFront(scene, point, topM));
            } else {
                line.course(piece);
                piece = new ArrayList<>();
            }
        }
        line.course(piece);
        tagsOnFront(scene, topM);
    }

    private void tagsOnFront(RackScene scene, double topM) {
        List<Point> points = water.path().points();
        tagOnFront(scene, topM, "water line", points.get(0), water.way().from().lineM());
        tagOnFront(
                scene,
                topM,
                endWord(),
                points.get(points.size() - 1),
                water.way().into().lineM());
        points.stream()
                .skip(2)
                .filter(point -> isAt(scene.rack(), point))
                .filter(point -> Math.abs(point.zM() - water.path().crest().zM()) < SAME_HEIGHT_M)
                .findFirst()
                .ifPresent(point -> line.tag("highest", point.zM(), onFront(scene, point, topM)));
    }

    private void tagOnFront(RackScene scene, double topM, String what, Point under, double heightM) {
        if (isAt(scene.rack(), under)) {
            line.tag(what, heightM, onFront(scene, new Point(under.xM(), under.yM(), heightM), topM));
        }
    }

    /** What is higher than the drawing is drawn at its upper edge; its tag says how high it is. */
    private Point2D onFront(RackScene scene, Point point, double topM) {
        return view.px(place(scene.rack(), point).getX(), Math.max(topM, -point.zM()));
    }

    private static boolean isAt(Rack rack, Point point) {
        Point2D place = place(rack, point);
        return place.getX() >= -BESIDE_M
                && place.getX() <= rack.widthM() + BESIDE_M
                && place.getY() >= -BEFORE_M
                && place.getY() <= rack.depthM() + BEFORE_M;
    }

    /** Along the rack from its left end, and into it from the front: the way back of {@link Rack#at}. */
    private static Point2D place(Rack rack, Point point) {
        double x = point.xM() - rack.xM();
        double y = point.yM() - rack.yM();
        return switch (rack.turn()) {
            case NONE -> new Point2D.Double(x, rack.depthM() - y);
            case QUARTER -> new Point2D.Double(y, x);
            case HALF -> new Point2D.Double(rack.widthM() - x, y);
            case THREE_QUARTERS -> new Point2D.Double(rack.widthM() - y, rack.depthM() - x);
        };
    }
}
