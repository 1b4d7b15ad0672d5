package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.plan.Plan;

/** Headroom in the unit that the keeper thinks in: a dot for each outlet, served, planned, or still free. */
public final class HeadroomPicture {
    private static final double DOT_PX = 9;
    private static final double LEAST_DOT_PX = 4;

    /** What a dot stands for. */
    private enum Place {
        SERVED,
        PLANNED,
        FREE,
        BEYOND
    }

    private HeadroomPicture() {}

    /** Height that it takes at a width, pixels, with dots of the usual size. */
    public static double height(Plan plan, double width, Look look) {
        double dot = look.px(DOT_PX);
        int inRow = Math.max(1, (int) (width / dot));
        return Math.ceil((double) places(plan).size() / inRow) * look.px(DOT_PX + 2);
    }

    /** Fills the area row by row; many outlets make smaller dots. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        List<Place> places = places(plan);
        double dot = dotPx(places.size(), area, look);
        int inRow = Math.max(1, (int) (area.getWidth() / dot));
        for (int i = 0; i < places.size(); i++) {
            double x = area.getX() + (i % inRow + 0.5) * dot;
            double y = area.getY() + (Math.floorDiv(i, inRow) + 0.5) * dot * 1.2;
            paint(places.get(i), x, y, 0.33 * dot, ink);
        }
    }

    private static double dotPx(int count, Rectangle2D area, Look look) {
        double dot = look.px(DOT_PX);
        while (dot > LEAST_DOT_PX && rows(count, area, dot) * dot * 1.2 > area.getHeight() + 0.5) {
            dot -= 0.25;
        }
        return dot;
    }

    private static int rows(int count, Rectangle2D area, double dot) {
        int inRow = Math.max(1, (int) (area.getWidth() / dot));
        return (count + inRow - 1) / inRow;
    }

    /** Planned outlets take free places first; those for which there is no place are told apart. */
    private static List<Place> places(Plan plan) {
        int served = plan.demand().needs().size();
        int planned = plan.demand().planned().size();
        int free = plan.headroom().map(room -> room.outlets()).orElse(0);
        List<Place> places = new ArrayList<>();
        add(places, Place.SERVED, served);
        add(places, Place.PLANNED, Math.min(planned, free));
        add(places, Place.BEYOND, Math.max(0, planned - free));
        add(places, Place.FREE, Math.max(0, free - planned));
        return places;
    }

    private static void add(List<Place> places, Place place, int count) {
        for (int i = 0; i < count; i++) {
            places.add(place);
        }
    }

    private static void paint(Place place, double x, double y, double radius, Ink ink) {
        switch (place) {
            case SERVED ->
                ink.fill(StateMark.circle(x, y, radius), ink.palette().air());
            case PLANNED ->
                ink.draw(StateMark.circle(x, y, radius), ink.palette().planned(), 1.4);
            case FREE -> ink.draw(StateMark.circle(x, y, radius), ink.palette().free(), 1);
            case BEYOND -> {
                ink.draw(StateMark.circle(x, y, radius), ink.palette().planned(), 1);
                ink.line(
                        x - radius,
                        y + radius,
                        x + radius,
                        y - radius,
                        ink.palette().accent(),
                        1.2);
            }
        }
    }
}
