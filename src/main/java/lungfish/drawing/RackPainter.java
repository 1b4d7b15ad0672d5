package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Paints a rack from its front, to scale: shelves, tanks with their water, and the devices at their true depth. */
public final class RackPainter {
    private static final double POST_M = 0.04;
    private static final double NARROW_PX = 64;

    private final RackScene scene;
    private final Marked marked;
    private final Ink ink;

    private RackPainter(RackScene scene, Marked marked, Ink ink) {
        this.scene = scene;
        this.marked = marked;
        this.ink = ink;
    }

    /** Paints the rack; the caller has filled the ground with the sheet's colour. */
    public static void paint(RackScene scene, Viewport viewport, Marked marked, Look look, Graphics2D g) {
        RackPainter painter = new RackPainter(scene, marked, new Ink(look, viewport, g));
        painter.floor();
        painter.rack();
        scene.rack().shelves().forEach(painter::tanks);
        scene.outlets().forEach(outlet -> DevicePainter.paint(outlet, marked, painter.ink));
    }

    private Color edge() {
        return scene.rack().isPlanned()
                ? ink.palette().planned()
                : ink.palette().softInk();
    }

    private void floor() {
        double y = ink.view().yPx(0);
        double over = ink.px(8);
        ink.line(
                ink.view().xPx(0) - over,
                y,
                ink.view().xPx(scene.rack().widthM()) + over,
                y,
                ink.palette().ink(),
                2);
    }

    private void rack() {
        Rack rack = scene.rack();
        Rectangle2D bounds = scene.boundsM();
        double top = bounds.getY() + 0.1;
        post(0, top);
        post(rack.widthM() - POST_M, top);
        for (Shelf shelf : rack.shelves()) {
            box(scene.boardM(shelf));
            Marks.around(shelf.id().part(), ink.view().px(scene.boardM(shelf)), marked, ink);
        }
    }

    private void post(double xM, double topM) {
        box(new Rectangle2D.Double(xM, topM, POST_M, -topM));
    }

    private void box(Rectangle2D boxM) {
        Rectangle2D box = ink.view().px(boxM);
        ink.fill(box, ink.palette().sheet());
        if (scene.rack().isPlanned()) {
            ink.draw(box, edge(), ink.dashed(1, 4));
        } else {
            ink.draw(box, edge(), 1);
        }
    }

    private void tanks(Shelf shelf) {
        boolean namesBelow = shelf.tanks().stream().anyMatch(tank -> besideAirlinePx(tank) < ink.px(NARROW_PX));
        for (Tank tank : shelf.tanks()) {
            Rectangle2D water = tank(shelf, tank);
            if (namesBelow) {
                nameBelow(tank, water);
            } else {
                nameInside(tank, water);
            }
        }
    }

    /** Left of its first airline, where a name may stand. */
    private double besideAirlinePx(Tank tank) {
        double share = 1.0 / (tank.outlets().size() + 1);
        return share * ink.view().lengthPx(tank.outside().lengthM()) - ink.px(14);
    }

    private Rectangle2D tank(Shelf shelf, Tank tank) {
        Rectangle2D glass = ink.view().px(RackScene.glassM(shelf, tank));
        ink.fill(glass, ink.palette().sheet());
        double deep = Math.min(glass.getHeight(), ink.view().lengthPx(tank.waterDepthM()));
        Rectangle2D water = new Rectangle2D.Double(glass.getX(), glass.getMaxY() - deep, glass.getWidth(), deep);
        if (scene.rack().isPlanned()) {
            ink.draw(glass, ink.palette().planned(), ink.dashed(1.2, 4));
            ink.draw(line(water), ink.palette().planned(), 0.8);
        } else {
            ink.fillWater(water);
            ink.draw(line(water), ink.palette().waterEdge(), 1.2);
            ink.draw(glass, ink.palette().waterEdge(), 1.4);
        }
        scene.breathing().ifPresent(laid -> new OxygenPainter(laid, ink).front(tank, water));
        Marks.around(tank.id().part(), glass, marked, ink);
        return water;
    }

    private static java.awt.geom.Line2D line(Rectangle2D water) {
        return new java.awt.geom.Line2D.Double(water.getX(), water.getY(), water.getMaxX(), water.getY());
    }

    /** In the upper left of the water, word under word, left of the first airline. */
    private void nameInside(Tank tank, Rectangle2D water) {
        Font font = ink.type().drawing();
        double roomPx = besideAirlinePx(tank);
        double baseline = water.getY() + ink.px(15);
        String line = "";
        for (String word : tank.name().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (ink.width(longer, font) > roomPx && !line.isEmpty()) {
                baseline = write(line, water, baseline, roomPx);
                longer = word;
            }
            line = longer;
        }
        write(line, water, baseline, roomPx);
    }

    /** Where one tank of a shelf is narrow, all have their names under the board. */
    private void nameBelow(Tank tank, Rectangle2D water) {
        Font font = ink.type().drawing();
        double baseline = water.getMaxY() + ink.view().lengthPx(RackScene.BOARD_M) + ink.px(13);
        double left = Math.max(water.getX(), ink.view().xPx(POST_M)) + ink.px(3); // between the posts
        double right = Math.min(water.getMaxX(), ink.view().xPx(scene.rack().widthM() - POST_M)) - ink.px(3);
        String name = ink.fitting(tank.name(), right - left, font);
        double x = (left + right - ink.width(name, font)) / 2;
        ink.text(name, x, baseline, font, ink.palette().softInk());
    }

    private double write(String line, Rectangle2D water, double baseline, double roomPx) {
        Font font = ink.type().drawing();
        if (baseline < water.getMaxY() - ink.px(3)) {
            ink.text(
                    ink.fitting(line, roomPx, font),
                    water.getX() + ink.px(6),
                    baseline,
                    font,
                    scene.rack().isPlanned()
                            ? ink.palette().planned()
                            : ink.palette().ink());
        }
        return baseline + ink.height(font);
    }
}
