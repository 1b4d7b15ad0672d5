package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;

/** The front of a rack for a page: title line, the rack, its ruler of heights. */
public final class RackSheet {
    private static final double MARGIN_PX = 24;
    private static final double TITLE_PX = 60;
    private static final double SIDES_PX = 70;

    private RackSheet() {}

    /** Fills the area with the sheet. */
    public static void paint(RackScene scene, Rectangle2D area, Marked marked, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        ink.fill(area, look.palette().sheet());
        Rectangle2D inside = Marks.outset(area, -ink.px(MARGIN_PX));
        title(scene, inside, look, g);
        Viewport view = viewport(scene, area, look);
        HeightsPainter.paint(scene, view, look, g);
        RackPainter.paint(scene, view, marked, look, g);
    }

    /** What the rack is called and what stands in it, in the upper left of an area. */
    public static void title(RackScene scene, Rectangle2D inside, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        Rack rack = scene.rack();
        ink.text(
                ink.fitting(rack.name(), inside.getWidth(), ink.type().headline()),
                inside.getX(),
                inside.getY() + ink.px(22),
                ink.type().headline(),
                ink.palette().ink());
        ink.text(
                ink.fitting(reason(rack, look), inside.getWidth(), ink.type().body()),
                inside.getX(),
                inside.getY() + ink.px(44),
                ink.type().body(),
                ink.palette().softInk());
    }

    /** What to do with a rack in which nothing stands yet; nothing where something does. */
    public static void invitation(RackScene scene, Rectangle2D inside, Look look, Graphics2D g) {
        if (scene.rack().tanks().findAny().isEmpty()) {
            Ink ink = Ink.flat(look, g);
            String says = scene.rack().shelves().isEmpty()
                    ? "Nothing here yet: S puts up a shelf, T a tank on it, D a device into the tank."
                    : "Shelves without a tank: T puts one down, and the devices follow with D.";
            ink.text(
                    ink.fitting(says, inside.getWidth(), ink.type().body()),
                    inside.getX(),
                    inside.getY() + ink.px(66),
                    ink.type().body(),
                    ink.palette().ink());
        }
    }

    /** The view in which a sheet of this area shows the rack: what turns a place on the sheet into one of the rack. */
    public static Viewport viewport(RackScene scene, Rectangle2D area, Look look) {
        Rectangle2D inside = Marks.outset(area, -look.px(MARGIN_PX));
        return Viewport.fit(
                scene.boundsM(),
                new Rectangle2D.Double(
                        inside.getX() + look.px(SIDES_PX),
                        inside.getY() + look.px(TITLE_PX),
                        inside.getWidth() - look.px(2 * SIDES_PX),
                        inside.getHeight() - look.px(TITLE_PX + 8)));
    }

    private static String reason(Rack rack, Look look) {
        long tanks = rack.tanks().count();
        long outlets = rack.tanks().mapToLong(tank -> tank.outlets().size()).sum();
        String stage = rack.isPlanned() ? "planned · " : "";
        return stage + rack.shelves().size() + " shelves · " + tanks + " tanks · " + outlets + " outlets · "
                + look.quantities().show(rack.widthM(), Dimension.DEPTH) + " wide";
    }
}
