package lungfish.desktop;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lungfish.drawing.HeightsPainter;
import lungfish.drawing.Hit;
import lungfish.drawing.Look;
import lungfish.drawing.RackPainter;
import lungfish.drawing.RackScene;
import lungfish.drawing.RackSheet;
import lungfish.drawing.RoomScene;
import lungfish.drawing.Viewport;
import lungfish.reason.PartId;
import lungfish.room.RackId;

/** One rack from its front. Escape, or Backspace, leads back to the room. */
final class RackCanvas extends Canvas {
    private static final int MARGIN = 36;
    private static final int TITLE = 60;
    private static final int TITLE_LEFT = 20;

    private final transient Supplier<RoomScene> room;
    private final RackId rack;

    RackCanvas(View view, Supplier<RoomScene> room, RackId rack, Runnable back) {
        super(view);
        this.room = room;
        this.rack = rack;
        setName("rack");
        getAccessibleContext().setAccessibleName("Front of " + view.names().of(rack.part()));
        CanvasKeys.bindPanning(this);
        CanvasKeys.bind(this, "RIGHT", () -> walk(1));
        CanvasKeys.bind(this, "DOWN", () -> walk(1));
        CanvasKeys.bind(this, "LEFT", () -> walk(-1));
        CanvasKeys.bind(this, "UP", () -> walk(-1));
        CanvasKeys.bind(this, "ESCAPE", back);
        CanvasKeys.bind(this, "BACK_SPACE", back);
        view.follow(this, this::repaint);
    }

    boolean shows(RackId id) {
        return rack.equals(id);
    }

    /** Empty when an edit has taken the rack away meanwhile. */
    private Optional<RackScene> scene() {
        return RackScene.of(room.get(), rack);
    }

    @Override
    Optional<Rectangle2D> whereM(PartId part) {
        return scene().flatMap(scene -> scene.whereM(part));
    }

    @Override
    Rectangle2D boundsM() {
        return scene().map(RackScene::boundsM).orElseGet(() -> new Rectangle2D.Double(0, 0, 1, 1));
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
        double left = view().px(TITLE_LEFT);
        RackSheet.title(scene, new Rectangle2D.Double(left, view().px(4), getWidth() - 2 * left, 0), look, g);
    }

    @Override
    Optional<Hit> at(double xM, double yM, double reachM) {
        return scene().flatMap(scene -> scene.at(xM, yM, reachM));
    }

    @Override
    void enter(Hit hit) {} // there is nothing deeper

    /** From outlet to outlet of this rack. */
    private void walk(int by) {
        List<PartId> outlets = room.get().room().seats().stream()
                .filter(seat -> seat.rack().id().equals(rack))
                .map(seat -> seat.outlet().id().part())
                .toList();
        if (!outlets.isEmpty()) {
            int at = view().chosen().map(outlets::indexOf).orElse(-1);
            view().choose(outlets.get(at < 0 ? 0 : Math.floorMod(at + by, outlets.size())));
        }
    }
}
