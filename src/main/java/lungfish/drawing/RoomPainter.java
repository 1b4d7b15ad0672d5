package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/** Paints a whole room from above, the lowest things first. */
public final class RoomPainter {
    private RoomPainter() {}

    /**
     * Paints the room and what is marked; the caller has filled the ground with the sheet's colour.
     *
     * @param frame what names keep inside of, pixels; not the clip, which may be a part of it that is painted again
     */
    public static void paint(
            RoomScene scene, Viewport viewport, Rectangle2D frame, Marked marked, Look look, Graphics2D g) {
        unmarked(scene, viewport, frame, look, g);
        marks(scene, viewport, marked, look, g);
    }

    /** The room alone: what can be kept while only the marks change. */
    public static void unmarked(RoomScene scene, Viewport viewport, Rectangle2D frame, Look look, Graphics2D g) {
        ground(scene, viewport, look, g);
        over(scene, viewport, frame, look, g);
    }

    /** Floor and racks with their tanks: what changes while an outage is played. */
    public static void ground(RoomScene scene, Viewport viewport, Look look, Graphics2D g) {
        Ink ink = new Ink(look, viewport, g);
        FloorPainter.paint(scene.room().shell(), ink);
        scene.racks().forEach(rack -> RackTopPainter.paint(rack, scene.breathing(), ink));
    }

    /** All that lies over the racks, and names: what can be kept while it is played. */
    public static void over(RoomScene scene, Viewport viewport, Rectangle2D frame, Look look, Graphics2D g) {
        Ink ink = new Ink(look, viewport, g);
        GrowthBand.paint(scene, ink);
        PipePainter.paint(scene, ink);
        scene.fittings().forEach(fitting -> FittingPainter.paint(fitting, ink));
        TapPainter.paint(scene, ink);
        GangPainter.paint(scene, ink);
        scene.outlets().forEach(outlet -> OutletPainter.paint(outlet, ink));
        scene.blowers().forEach(blower -> BlowerPainter.paint(blower, ink));
        scene.room().listener().ifPresent(listener -> ListenerPainter.paint(listener, ink));
        Optional<GrowthFigures> figures = GrowthFigures.of(scene, frame, ink);
        List<Rectangle2D> taken = figures.map(GrowthFigures::boxes).orElse(List.of());
        RoomLabels.paint(RoomNames.of(scene, frame, taken, ink), ink);
        figures.ifPresent(GrowthFigures::paint);
    }

    /** What is chosen or under the pointer, over the room, and the way of water that is asked about. */
    public static void marks(RoomScene scene, Viewport viewport, Marked marked, Look look, Graphics2D g) {
        Ink ink = new Ink(look, viewport, g);
        RoomMarks.paint(scene, marked, ink);
        scene.water().ifPresent(water -> WaterPainter.paint(water, ink));
    }
}
