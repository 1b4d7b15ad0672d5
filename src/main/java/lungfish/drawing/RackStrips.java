package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** A rack from above: one strip for each shelf, the top shelf first as one reads the page (from the top, or the left). */
final class RackStrips {
    private final Rack rack;

    RackStrips(Rack rack) {
        this.rack = rack;
    }

    static Rectangle2D outlineM(Rack rack) {
        return between(rack.at(0, 0, 0), rack.at(rack.widthM(), rack.depthM(), 0));
    }

    /** Whether its strips lie across the page. */
    boolean isAcross() {
        return rack.turn() == Rack.Turn.NONE || rack.turn() == Rack.Turn.HALF;
    }

    Rectangle2D strip(int shelf) {
        return between(rack.at(0, nearM(shelf), 0), rack.at(rack.widthM(), farM(shelf), 0));
    }

    Rectangle2D tank(int shelf, Tank tank) {
        double endM = tank.xM() + tank.outside().lengthM();
        return between(rack.at(tank.xM(), nearM(shelf), 0), rack.at(endM, farM(shelf), 0));
    }

    /** Where an outlet of a tank is drawn; {@code share} goes over the strip in reading direction, 0.5 its middle. */
    Point outlet(int shelf, Tank tank, int number, double share) {
        double alongM = tank.xM()
                + tank.outside().lengthM() * (number + 1.0) / (tank.outlets().size() + 1.0);
        Rectangle2D strip = strip(shelf);
        Point middle = rack.at(alongM, rack.depthM() / 2, 0);
        return isAcross()
                ? new Point(middle.xM(), strip.getY() + share * strip.getHeight(), 0)
                : new Point(strip.getX() + share * strip.getWidth(), middle.yM(), 0);
    }

    int indexOf(Shelf shelf) {
        return rack.shelves().indexOf(shelf);
    }

    private double stripM() {
        return rack.depthM() / Math.max(1, rack.shelves().size());
    }

    /** How many strips come before this shelf's, read from the back of the rack to its front. */
    private int fromBack(int shelf) {
        boolean readsFromBack = rack.turn() == Rack.Turn.NONE || rack.turn() == Rack.Turn.THREE_QUARTERS;
        int fromTop = rack.shelves().size() - 1 - shelf;
        return readsFromBack ? fromTop : shelf;
    }

    private double farM(int shelf) {
        return rack.depthM() - fromBack(shelf) * stripM();
    }

    private double nearM(int shelf) {
        return farM(shelf) - stripM();
    }

    private static Rectangle2D between(Point one, Point other) {
        Rectangle2D.Double box = new Rectangle2D.Double(one.xM(), one.yM(), 0, 0);
        box.add(other.xM(), other.yM());
        return box;
    }
}
