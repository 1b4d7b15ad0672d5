package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Place;
import lungfish.growth.RackFit;
import lungfish.room.Run;

/** The figures on a growing room: counts on the pipe, a tag on each planned rack, and the best place. */
final class GrowthFigures {
    private static final double PAD_PX = 5;
    private static final double HIGH_PX = 16;
    private static final double SHORTEST_RUN_PX = 64;
    private static final double APART_PX = 120;
    private static final double STEP_PX = 14;
    private static final double BEST_PX = 6;

    /** A figure off the middle of its stretch is as bad as one that covers so much. */
    private static final double ASIDE = 0.4;

    private static final double TAKEN = 12;

    private final RoomScene scene;
    private final GrowthLaid growing;
    private final Ink ink;
    private final LabelSpots spots;
    private final List<Tag> tags = new ArrayList<>();
    private Optional<Label> best = Optional.empty();

    /** Words in a frame of their own. */
    private record Tag(Rectangle2D box, String text, boolean isBroken) {}

    /** A point of a run, and how many fit there. */
    private record Spot(double alongPx, Point2D at, int outlets) {}

    private GrowthFigures(RoomScene scene, GrowthLaid growing, LabelSpots spots, Ink ink) {
        this.scene = scene;
        this.growing = growing;
        this.spots = spots;
        this.ink = ink;
    }

    /** Those of a scene, placed where they cover least; empty where nothing is laid over it. */
    static Optional<GrowthFigures> of(RoomScene scene, Rectangle2D frame, Ink ink) {
        return scene.growing().filter(each -> !each.map().places().isEmpty()).map(growing -> {
            GrowthFigures figures =
                    new GrowthFigures(scene, growing, TakenGround.of(scene, frame, List.of(), ink), ink);
            figures.racks();
            figures.best();
            scene.room().runs().forEach(figures::run);
            return figures;
        });
    }

    private HeadroomMap map() {
        return growing.map();
    }

    private Font font() {
        return ink.type().drawingName();
    }

    private void run(Run run) {
        List<Spot> along = along(run);
        if (along.isEmpty() || along.get(along.size() - 1).alongPx() < ink.px(SHORTEST_RUN_PX)) {
            return;
        }
        for (List<Spot> stretch : stretches(along)) {
            figure(stretch);
        }
    }

    /** Points at even distances on the drawing. */
    private List<Spot> along(Run run) {
        List<Spot> spotted = new ArrayList<>();
        for (List<GrowthProfile.Mark> piece : new GrowthProfile(map(), run).pieces()) {
            for (int i = 1; i < piece.size(); i++) {
                add(spotted, piece.get(i - 1), piece.get(i));
            }
        }
        return spotted;
    }

    private void add(List<Spot> spotted, GrowthProfile.Mark from, GrowthProfile.Mark to) {
        Point2D a = ink.view().px(from.at().xM(), from.at().yM());
        Point2D b = ink.view().px(to.at().xM(), to.at().yM());
        double before = spotted.isEmpty() ? 0 : spotted.get(spotted.size() - 1).alongPx();
        double length = a.distance(b);
        int steps = (int) Math.ceil(length / ink.px(STEP_PX));
        for (int i = 1; i <= steps; i++) {
            double share = (i - 0.5) / steps;
            Point2D at = new Point2D.Double(
                    a.getX() + share * (b.getX() - a.getX()), a.getY() + share * (b.getY() - a.getY()));
            int outlets = (int) Math.floor(from.outlets() + share * (to.outlets() - from.outlets()) + 1e-9);
            spotted.add(new Spot(before + share * length, at, outlets));
        }
    }

    /** One figure for a pipe along which the place does not matter; else one for each bit of it. */
    private List<List<Spot>> stretches(List<Spot> along) {
        double whole = along.get(along.size() - 1).alongPx();
        int count = map().placeMatters() ? Math.max(1, (int) (whole / ink.px(APART_PX))) : 1;
        List<List<Spot>> stretches = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = i * along.size() / count;
            int to = (i + 1) * along.size() / count;
            if (to > from) {
                stretches.add(along.subList(from, to));
            }
        }
        return stretches;
    }

    private void figure(List<Spot> stretch) {
        Spot middle = stretch.get(stretch.size() / 2);
        Spot spot = stretch.stream()
                .min(Comparator.comparingDouble(each -> cost(each, middle)))
                .orElseThrow();
        tag(box(spot.at(), words(spot)), words(spot), false);
    }

    private String words(Spot spot) {
        return map().placeMatters() || map().least() == map().most()
                ? String.valueOf(spot.outlets())
                : map().least() + "–" + map().most();
    }

    private double cost(Spot spot, Spot middle) {
        Rectangle2D box = box(spot.at(), words(spot));
        return spots.share(box) + ASIDE * Math.abs(spot.alongPx() - middle.alongPx()) / ink.px(APART_PX);
    }

    private Rectangle2D box(Point2D at, String text) {
        double wide = Math.max(ink.px(HIGH_PX), ink.width(text, font()) + 2 * ink.px(PAD_PX));
        double high = ink.px(HIGH_PX);
        return new Rectangle2D.Double(at.getX() - wide / 2, at.getY() - high / 2, wide, high);
    }

    private void tag(Rectangle2D box, String text, boolean isBroken) {
        spots.take(Marks.outset(box, ink.px(3)), TAKEN);
        tags.add(new Tag(box, text, isBroken));
    }

    private void racks() {
        for (RackFit fit : map().racks()) {
            scene.racks().stream()
                    .filter(rack -> rack.rack().isPlanned() && rack.rack().id().equals(fit.rack()))
                    .forEach(rack -> rack(rack, fit));
        }
    }

    /** In the middle of the rack: the whole word where there is room for it. */
    private void rack(RackPart rack, RackFit fit) {
        Rectangle2D box = ink.view().px(rack.outlineM());
        String figure = fit.fits() ? fit.own().outlets() + " after it" : "does not fit";
        String brief = fit.fits() ? String.valueOf(fit.own().outlets()) : "✕";
        boolean isRoomy = ink.width("fits, " + figure, font()) + ink.px(4 * PAD_PX) < box.getWidth();
        boolean isTight = ink.width(figure, font()) + ink.px(3 * PAD_PX) > box.getWidth();
        String text = isTight ? brief : isRoomy && fit.fits() ? "fits, " + figure : figure;
        tag(box(new Point2D.Double(box.getCenterX(), box.getCenterY()), text), text, !fit.fits());
    }

    private void best() {
        if (map().placeMatters()) {
            map().best().ifPresent(this::best);
        }
    }

    private void best(Place place) {
        Point2D at = ink.view().px(place.at().xM(), place.at().yM());
        Ellipse2D ring = StateMark.circle(at.getX(), at.getY(), ink.px(BEST_PX + 1));
        String text = "best place: " + place.outlets() + " more";
        Leads leads = new Leads(ink, spots);
        Rectangle2D size = new Rectangle2D.Double(0, 0, ink.width(text, font()), ink.height(font()));
        Label words = new Label(text, size, font(), ink.palette().planned(), Optional.empty());
        spots.take(ring.getBounds2D(), TAKEN);
        best = Optional.of(leads.label(leads.best(ring, size), ring, words));
    }

    /** What names must keep clear of. */
    List<Rectangle2D> boxes() {
        List<Rectangle2D> boxes = new ArrayList<>();
        tags.forEach(tag -> boxes.add(Marks.outset(tag.box(), ink.px(2))));
        best.ifPresent(label -> boxes.add(Marks.outset(label.box(), ink.px(2))));
        return boxes;
    }

    void paint() {
        best.ifPresent(this::paintBest);
        tags.forEach(this::paint);
    }

    private void paint(Tag tag) {
        double arc = ink.px(HIGH_PX);
        Rectangle2D box = tag.box();
        RoundRectangle2D frame =
                new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
        Color colour = tag.isBroken() ? ink.palette().accent() : ink.palette().planned();
        ink.fill(frame, ink.palette().sheet());
        ink.draw(frame, colour, growing.isCurrent() ? 1.2 : 0.7);
        double baseline = box.getCenterY() + ink.letters(font()) / 2;
        ink.textAround(
                tag.text(),
                box.getCenterX(),
                baseline,
                font(),
                growing.isCurrent() ? colour : ink.palette().free());
    }

    /** A diamond: no outlet has that shape. */
    private void paintBest(Label label) {
        label.veil(ink);
        label.lead(ink);
        label.write(ink);
        map().best().ifPresent(place -> {
            double x = ink.view().xPx(place.at().xM());
            double y = ink.view().yPx(place.at().yM());
            diamond(x, y, ink.px(BEST_PX), ink);
        });
    }

    static void diamond(double x, double y, double radius, Ink ink) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - radius);
        path.lineTo(x + radius, y);
        path.lineTo(x, y + radius);
        path.lineTo(x - radius, y);
        path.closePath();
        ink.fill(path, ink.palette().planned());
        ink.draw(path, ink.palette().sheet(), 1.4);
    }
}
