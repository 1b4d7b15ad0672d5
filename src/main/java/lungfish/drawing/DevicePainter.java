package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import lungfish.catalogue.DeviceClass;
import lungfish.drawing.RackScene.FrontOutlet;
import lungfish.quantity.Dimension;
import lungfish.room.Tank;

/** Paints a device at its true depth: its airline from the rim, its body, its state, and bubbles that rise from it. */
final class DevicePainter {
    private DevicePainter() {}

    static void paint(FrontOutlet front, Marked marked, Ink ink) {
        double x = ink.view().xPx(front.xM());
        double y = ink.view().yPx(front.releaseYM());
        double rim = ink.view().yPx(front.rimYM()) - ink.px(10);
        boolean planned = front.outlet().seat().planned();
        ink.line(x, rim, x, y, planned ? ink.palette().planned() : ink.palette().air(), 1.2);
        body(front, x, y, ink);
        StateMark.paint(front.outlet().state(), x, y, ink.px(StateMark.RADIUS_PX), ink);
        bubbles(front, x, y, ink);
        depth(front, x, y, ink);
        Rectangle2D around = new Rectangle2D.Double(x - ink.px(10), y - ink.px(10), ink.px(20), ink.px(20));
        Marks.around(front.outlet().part(), around, marked, ink);
    }

    /** How deep the air is let go, where there is room to say so. */
    private static void depth(FrontOutlet front, double x, double y, Ink ink) {
        Tank tank = front.outlet().seat().tank();
        double depthM = front.releaseYM() + front.outlet().seat().waterLineM();
        String text = ink.look().quantities().show(depthM, Dimension.DEPTH);
        double placeM = tank.outside().lengthM() / (tank.outlets().size() + 1);
        double left = x + ink.px(15);
        if (ink.width(text, ink.type().drawing()) + ink.px(20) < ink.view().lengthPx(placeM)) {
            ink.text(
                    text,
                    left,
                    y + ink.px(4),
                    ink.type().drawing(),
                    ink.palette().ink());
        }
    }

    /** A sponge or box is a block around the release, a stone a bar, a tube or cone open lines. */
    private static void body(FrontOutlet front, double x, double y, Ink ink) {
        DeviceClass.Kind kind = front.need().map(need -> need.device().kind()).orElse(DeviceClass.Kind.AIR_STONE);
        double wide =
                switch (kind) {
                    case SPONGE_FILTER, BOX_FILTER, MOVING_BED_FILTER, UNDER_GRAVEL -> 22;
                    case AIR_STONE, DIFFUSER -> 14;
                    case HATCHING_CONE, EGG_TUMBLER, UPLIFT_TUBE -> 10;
                };
        double high =
                switch (kind) {
                    case SPONGE_FILTER, MOVING_BED_FILTER, BOX_FILTER -> 22;
                    case AIR_STONE, DIFFUSER, UNDER_GRAVEL -> 9;
                    case HATCHING_CONE, EGG_TUMBLER, UPLIFT_TUBE -> 16;
                };
        RoundRectangle2D body = new RoundRectangle2D.Double(
                x - ink.px(wide / 2), y - ink.px(high / 2), ink.px(wide), ink.px(high), ink.px(5), ink.px(5));
        ink.fill(body, ink.palette().sheet());
        ink.draw(
                body,
                front.outlet().seat().planned()
                        ? ink.palette().planned()
                        : ink.palette().air(),
                1);
    }

    private static void bubbles(FrontOutlet front, double x, double y, Ink ink) {
        if (front.outlet().seat().planned() || front.outlet().state() == OutletState.CLOSED) {
            return;
        }
        double waterLine = ink.view().yPx(-front.outlet().seat().waterLineM());
        int i = 0;
        for (double up = y - ink.px(18); up > waterLine + ink.px(3); up -= ink.px(9)) {
            double sway = ink.px(i % 2 == 0 ? 5 : 8);
            ink.draw(
                    StateMark.circle(x + sway, up, ink.px(1.4 + 0.2 * (i % 3))),
                    ink.palette().air(),
                    0.9);
            i++;
        }
    }
}
