package lungfish.desktop;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import lungfish.drawing.HeightsPainter;
import lungfish.drawing.Hit;
import lungfish.drawing.Look;
import lungfish.drawing.RackPainter;
import lungfish.drawing.RackScene;
import lungfish.drawing.RackSheet;
import lungfish.drawing.RoomScene;
import lungfish.drawing.SketchPainter;
import lungfish.drawing.Viewport;
import lungfish.drawing.WaterPainter;
import lungfish.edit.Attempt;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.quantity.Dimension;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import lungfish.room.Room;

/** One rack from its front. Escape with nothing going on, or Backspace, leads back to the room. */
final class RackCanvas extends Canvas {
    private static final int MARGIN = 36;
    private static final int TITLE = 60;
    private static final int TITLE_LEFT = 20;
    private static final double HERE_M = 0.01;

    private final transient Supplier<RoomScene> room;
    private final transient Front front;
    private final transient Runnable back;
    private final transient Runnable figures;
    private transient Rectangle2D boundsM = new Rectangle2D.Double(0, 0, 1, 1);

    /**
     * A canvas of whichever rack the front is of.
     *
     * @param back leads back to the room
     * @param figures leads to the fields of what is chosen
     */
    RackCanvas(View view, ToolBelt belt, Supplier<RoomScene> room, Front front, Runnable back, Runnable figures) {
        super(view, belt);
        this.room = room;
        this.front = front;
        this.back = back;
        this.figures = figures;
        setName("rack");
        Keys.bind(this, "BACK_SPACE", back);
        speak();
        view.onChange(this::tell);
    }

    /** Another rack is open, or the room has changed. */
    void tell() {
        if (!view().desk().isTrying()) {
            Rectangle2D now = scene().map(RackScene::boundsM).orElse(boundsM);
            if (!now.equals(boundsM)) {
                boundsM = now;
                fit();
            }
        }
        repaint();
    }

    @Override
    String title() {
        return "Front of " + front.rack().map(Rack::name).orElse("a rack");
    }

    /** Empty when an edit has taken the rack away meanwhile. */
    private Optional<RackScene> scene() {
        return front.id().flatMap(id -> RackScene.of(room.get(), id));
    }

    @Override
    Optional<Rectangle2D> whereM(PartId part) {
        return scene().flatMap(scene -> scene.whereM(part));
    }

    @Override
    Rectangle2D boundsM() {
        return boundsM; // while the hand draws, the rack stays where it is under it
    }

    @Override
    Rectangle2D areaPx() {
        int margin = view().px(MARGIN);
        int top = view().px(TITLE);
        return new Rectangle2D.Double(
                2.0 * margin,
                top,
                Math.max(1, getWidth() - 4.0 * margin),
                Math.max(1, getHeight() - top - 0.5 * margin));
    }

    @Override
    void paintDrawing(Viewport viewport, Graphics2D g) {
        scene().ifPresent(scene -> paint(scene, viewport, g));
    }

    private void paint(RackScene scene, Viewport viewport, Graphics2D g) {
        Look look = view().look();
        HeightsPainter.paint(scene, viewport, look, g);
        RackPainter.paint(scene, viewport, view().marked(), look, g);
        view().led().water().ifPresent(water -> WaterPainter.paint(water, scene, viewport, look, g));
        double left = view().px(TITLE_LEFT);
        RackSheet.title(scene, new Rectangle2D.Double(left, view().px(4), getWidth() - 2 * left, 0), look, g);
        RackSheet.invitation(scene, new Rectangle2D.Double(left, view().px(4), getWidth() - 2 * left, 0), look, g);
        SketchPainter.paint(tool().sketch(), new Rectangle2D.Double(0, 0, getWidth(), getHeight()), viewport, look, g);
    }

    @Override
    Optional<Hit> at(double xM, double yM, double reachM) {
        return scene().flatMap(scene -> scene.at(xM, yM, reachM));
    }

    @Override
    void enter(Hit hit) {
        figures.run();
    }

    @Override
    void enterChosen() {
        figures.run();
    }

    @Override
    void leave() {
        back.run();
    }

    private Optional<FrontWalk> walk() {
        return front.rack().map(FrontWalk::new);
    }

    @Override
    void walk(int dx, int dy) {
        choose(walk().flatMap(walk -> walk.next(view().selection(), dx, dy)));
    }

    @Override
    void delve(int way) {
        Selection chosen = view().selection();
        choose(walk().flatMap(walk -> way > 0 ? walk.into(chosen) : Optional.of(walk.outOf(chosen))));
    }

    @Override
    double nextStop(double fromM, boolean across, int way) {
        return front.rack()
                .map(rack -> across ? Front.endsM(rack) : Front.boardsM(rack))
                .flatMap(stops -> stops.stream()
                        .filter(at -> way * (at - fromM) > HERE_M)
                        .min(Comparator.comparingDouble(at -> way * at)))
                .orElse(fromM);
    }

    @Override
    String words(Point2D placeM) {
        return view().quantities().show(placeM.getX(), Dimension.DEPTH) + " from the left end, "
                + FrontResting.above(view(), -placeM.getY());
    }

    private void choose(Optional<Part> part) {
        part.map(Selection::of)
                .flatMap(one -> Handles.named(one).stream().findFirst())
                .ifPresent(this::leadTo);
    }

    @Override
    Attempt nudged(Room now, Selection chosen, int dx, int dy, boolean finely) {
        return FrontNudge.of(view(), front, chosen, dx, dy, finely);
    }

    @Override
    Selection everything() {
        return front.rack().map(Selecting::all).orElse(Selection.NONE);
    }
}
