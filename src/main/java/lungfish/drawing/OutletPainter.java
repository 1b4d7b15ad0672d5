package lungfish.drawing;

import lungfish.drawing.SceneParts.OutletPart;
import lungfish.room.Rack;
import lungfish.room.Tank;

/** Paints one outlet from above. */
final class OutletPainter {
    /** Of its share of the tank, a mark takes no more than this on either side of its middle. */
    private static final double MOST_SHARE = 0.28;

    private static final double LEAST_PX = 1.3;

    private OutletPainter() {}

    static void paint(OutletPart outlet, Ink ink) {
        double x = ink.view().xPx(outlet.xM());
        double y = ink.view().yPx(outlet.yM());
        double radius = radiusPx(outlet, ink);
        if (!ink.isSeen(Boxes.around(x, y, 3 * radius))) {
            return;
        }
        StateMark.paint(outlet.state(), x, y, radius, ink);
        if (outlet.index() && outlet.state() != OutletState.INDEX) {
            ink.draw(StateMark.circle(x, y, radius * 2.2), ink.palette().accent(), 1.5);
        }
    }

    static double radiusPx(OutletPart outlet, Ink ink) {
        Rack rack = outlet.seat().rack();
        Tank tank = outlet.seat().tank();
        double stripM = rack.depthM() / rack.shelves().size();
        double placeM = tank.outside().lengthM() / (tank.outlets().size() + 1);
        double most = MOST_SHARE * ink.view().lengthPx(Math.min(stripM, placeM));
        return Math.max(LEAST_PX, Math.min(ink.px(StateMark.RADIUS_PX), most));
    }
}
