package lungfish.desktop;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lungfish.drawing.Hit;
import lungfish.drawing.KeptPicture;
import lungfish.drawing.LegendPainter;
import lungfish.drawing.Look;
import lungfish.drawing.OxygenLaid;
import lungfish.drawing.RoomPainter;
import lungfish.drawing.RoomScene;
import lungfish.drawing.RulerPainter;
import lungfish.drawing.Sketch;
import lungfish.drawing.SketchPainter;
import lungfish.drawing.Viewport;
import lungfish.edit.Attempt;
import lungfish.edit.Jumps;
import lungfish.edit.Moves;
import lungfish.edit.Places;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.edit.Walking;
import lungfish.oxygen.Case;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;

/** The room from above. */
final class RoomCanvas extends Canvas {
    private static final int SIDE = 40;
    private static final int TOP = 32;
    private static final double MOST_LEGEND = 0.2; // of the height

    /** Text is measured before there is anything to paint on. */
    private static final Graphics2D MEASURING = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

    private final transient Consumer<RackId> openRack;
    private final transient KeptPicture kept = new KeptPicture();
    private final transient KeptPicture keptOver = KeptPicture.clear();
    private transient RoomScene base;
    private transient RoomScene scene;
    private transient Rectangle2D boundsM;
    private transient Legend legend = new Legend(0, 0, 0);
    private boolean isLegendKept;

    /** How high the legend is in a canvas so wide and high, pixels. */
    private record Legend(int widthPx, int heightPx, double px) {}

    RoomCanvas(View view, ToolBelt belt, Consumer<RackId> openRack) {
        super(view, belt);
        this.openRack = openRack;
        this.base = newScene();
        this.scene = base;
        this.boundsM = scene.boundsM();
        setName("room");
        speak();
        view.onChange(this::tell);
    }

    @Override
    String title() {
        return "The room from above";
    }

    private void tell() {
        base = newScene();
        scene = base.breathing(view().breathing());
        boolean isStill = view().desk().isTrying() || tool().next().isPresent();
        isLegendKept = isStill && isLegendKept;
        if (!isStill && !scene.boundsM().equals(boundsM)) {
            boundsM = scene.boundsM();
            fit();
        }
        repaint();
    }

    private RoomScene newScene() {
        return view().plan()
                .map(plan -> RoomScene.of(plan, view().shown()))
                .orElseGet(() -> RoomScene.of(view().desk().room()))
                .growing(view().growing())
                .water(view().led().water());
    }

    RoomScene scene() {
        scene = scene.breathing(view().breathing()); // the time of an outage goes on while all else stays
        return scene;
    }

    @Override
    void leave() {
        view().chooseNothing();
    }

    @Override
    Rectangle2D boundsM() {
        return boundsM; // while the hand draws, the room stays where it is under it
    }

    @Override
    Rectangle2D areaPx() {
        int side = view().px(SIDE);
        int top = view().px(TOP);
        double below = legendHeight() + view().px(16);
        return new Rectangle2D.Double(
                side, top, Math.max(1, getWidth() - 1.5 * side), Math.max(1, getHeight() - top - below));
    }

    /** While the hand draws it stays as it is, whatever there would be to explain: the room stays under the hand. */
    private double legendHeight() {
        boolean isOfThisSize = legend.widthPx() == getWidth() && legend.heightPx() == getHeight();
        if (!isLegendKept || !isOfThisSize) {
            legend = new Legend(getWidth(), getHeight(), newLegendHeight());
            isLegendKept = true;
        }
        return legend.px();
    }

    private double newLegendHeight() {
        return LegendPainter.height(scene, legendWidth(), MOST_LEGEND * getHeight(), view().look(), MEASURING);
    }

    private double legendWidth() {
        return Math.max(1, getWidth() - 2.0 * view().px(SIDE));
    }

    @Override
    void paintDrawing(Viewport viewport, Graphics2D g) {
        Look look = view().look();
        Graphics2D clipped = (Graphics2D) g.create();
        clipped.clip(drawnPx());
        if (view().breathing().isPresent()) {
            paintBreathing(viewport, g, clipped);
        } else {
            kept.paint(
                    getWidth(), getHeight(), List.of(scene, viewport, look), each -> paintUnmarked(viewport, each), g);
        }
        RoomPainter.marks(scene, viewport, view().marked(), look, clipped);
        SketchPainter.paint(smallMarks(), drawnPx(), viewport, look, clipped);
        SketchPainter.paint(aim().over(tool().sketch()), drawnPx(), viewport, look, clipped);
        clipped.dispose();
    }

    private Sketch smallMarks() {
        SmallMarks marks = new SmallMarks(scene.room());
        return new Sketch(marks.of(view().selection(), view().pointed()).toList(), Optional.empty());
    }

    /** Where the room is drawn, above the legend. */
    private Rectangle2D drawnPx() {
        return new Rectangle2D.Double(0, 0, getWidth(), getHeight() - legendHeight() - view().px(4));
    }

    private void paintUnmarked(Viewport viewport, Graphics2D g) {
        Look look = view().look();
        g.setColor(look.palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        Graphics2D clipped = (Graphics2D) g.create();
        clipped.clip(drawnPx());
        RoomPainter.ground(scene, viewport, look, clipped);
        clipped.dispose();
        paintOver(viewport, g);
    }

    /** While an outage is played its tanks are painted each time, and what lies over them is kept. */
    private void paintBreathing(Viewport viewport, Graphics2D g, Graphics2D clipped) {
        Look look = view().look();
        Optional<Case> how = view().breathing().map(OxygenLaid::how);
        RoomPainter.ground(scene(), viewport, look, clipped);
        keptOver.paint(
                getWidth(), getHeight(), List.of(base, how, viewport, look), each -> paintOver(viewport, each), g);
    }

    private void paintOver(Viewport viewport, Graphics2D g) {
        Look look = view().look();
        Rectangle2D drawn = drawnPx();
        Graphics2D clipped = (Graphics2D) g.create();
        clipped.clip(drawn);
        RoomPainter.over(scene, viewport, drawn, look, clipped);
        RulerPainter.paint(scene, drawn, viewport, look, clipped);
        clipped.dispose();
        double legend = legendHeight();
        Rectangle2D at = new Rectangle2D.Double(view().px(SIDE), getHeight() - legend, legendWidth(), legend);
        LegendPainter.paint(scene, at, look, g);
    }

    @Override
    Optional<Hit> at(double xM, double yM, double reachM) {
        return scene.at(xM, yM, reachM);
    }

    @Override
    void enter(Hit hit) {
        rackOf(hit.part()).ifPresent(openRack);
    }

    @Override
    Optional<Rectangle2D> whereM(PartId part) {
        return scene.whereM(part);
    }

    @Override
    void enterChosen() {
        view().chosen().flatMap(this::rackOf).ifPresent(openRack);
    }

    /** The rack that a part is, or stands in. */
    private Optional<RackId> rackOf(PartId part) {
        return Handles.of(part)
                .flatMap(there -> Selecting.rackOf(scene.room(), there))
                .map(Rack::id);
    }

    @Override
    Attempt nudged(Room room, Selection chosen, int dx, int dy, boolean finely) {
        double stepM = finely ? Resting.fineM(view()) : Resting.gridM(view());
        return Moves.by(room, Handles.carriers(room, chosen), dx * stepM, dy * stepM);
    }

    @Override
    String words(Point2D placeM) {
        Quantities shown = view().quantities();
        return "from the left " + shown.show(placeM.getX(), Dimension.LENGTH) + ", from the top "
                + shown.show(placeM.getY(), Dimension.LENGTH);
    }

    @Override
    double nextStop(double fromM, boolean across, int way) {
        return Jumps.next(view().desk().room(), fromM, across, way);
    }

    @Override
    Selection everything() {
        return Selecting.all(view().desk().room());
    }

    @Override
    void walk(int dx, int dy) {
        Room room = view().desk().room();
        Selection from = view().selection();
        Selection to =
                dx != 0 ? Walking.along(room, from, dx) : dy > 0 ? Walking.down(room, from) : Walking.up(room, from);
        if (!to.isEmpty()) {
            view().select(to);
            to.lead().flatMap(part -> Places.of(room, part)).map(Boxes::shape).ifPresent(this::lookAt);
        }
    }
}
